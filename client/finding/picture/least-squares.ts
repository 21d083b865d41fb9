import { CholeskyDecomposition, Matrix } from 'ml-matrix';

/** Residuals of a point, a column, and how they change with each of its coordinates: a row a residual. */
export interface Slope {
  readonly off: readonly number[];
  readonly by: Matrix;
}

const STEP = 1e-4;

/** By differences. */
export function slopeAt(off: (at: readonly number[]) => number[], at: readonly number[]): Slope {
  const here = off(at);
  const moved = at.map((value, i) => off(at.with(i, value + STEP)));
  return {
    off: here,
    by: new Matrix(here.map((r, row) => moved.map((there) => ((there[row] ?? r) - r) / STEP))),
  };
}

export const squares = (off: readonly number[]) => off.reduce((sum, r) => sum + r * r, 0);

/** JᵀJ and Jᵀr. */
export function normal({ off, by }: Slope): { matrix: Matrix; right: Matrix } {
  const turned = by.transpose();
  return { matrix: turned.mmul(by), right: turned.mmul(Matrix.columnVector([...off])) };
}

/** A symmetric matrix as L·Lᵀ; null where it is not positive. */
export function factored(matrix: Matrix): CholeskyDecomposition | null {
  const factors = new CholeskyDecomposition(matrix);
  return factors.isPositiveDefinite() ? factors : null;
}

export const logDeterminant = ({ lowerTriangularMatrix }: CholeskyDecomposition) =>
  2 * lowerTriangularMatrix.diagonal().reduce((sum, value) => sum + Math.log(value), 0);

/** Levenberg (1944) and Marquardt (1963): from `start` downhill in so many steps. */
export function descend(
  off: (at: readonly number[]) => number[],
  start: readonly number[],
  steps: number,
): { at: readonly number[]; sum: number } {
  let [at, sum, damping] = [start, squares(off(start)), 1e-2];
  for (let i = 0; i < steps && damping < 1e8; i += 1) {
    const { matrix, right } = normal(slopeAt(off, at));
    for (let k = 0; k < matrix.rows; k += 1) matrix.set(k, k, matrix.get(k, k) * (1 + damping) + 1e-9);
    const way = factored(matrix)?.solve(right);
    const next = way ? at.map((value, k) => value - way.get(k, 0)) : at;
    const there = way ? squares(off(next)) : Infinity;
    if (there < sum) {
      const gain = sum - there;
      [at, sum, damping] = [next, there, damping / 5];
      if (gain < 1e-4 * sum) break;
    } else damping *= 4;
  }
  return { at, sum };
}
