/** Residuals of a point, and how they change with each of its coordinates: a row a residual. */
export interface Slope {
  readonly off: readonly number[];
  readonly by: readonly (readonly number[])[];
}

const STEP = 1e-4;

/** By differences. */
export function slopeAt(off: (at: readonly number[]) => number[], at: readonly number[]): Slope {
  const here = off(at);
  const moved = at.map((value, i) => off(at.with(i, value + STEP)));
  return { off: here, by: here.map((r, row) => moved.map((there) => ((there[row] ?? r) - r) / STEP)) };
}

export const squares = (off: readonly number[]) => off.reduce((sum, r) => sum + r * r, 0);

/** JᵀJ and Jᵀr. */
export function normal({ off, by }: Slope): { matrix: number[][]; right: number[] } {
  const size = by[0]?.length ?? 0;
  const matrix = Array.from({ length: size }, () => new Array<number>(size).fill(0));
  const right = new Array<number>(size).fill(0);
  by.forEach((row, k) => {
    row.forEach((a, i) => {
      right[i] = (right[i] ?? 0) + a * (off[k] ?? 0);
      const line = matrix[i] ?? [];
      row.forEach((b, j) => (line[j] = (line[j] ?? 0) + a * b));
    });
  });
  return { matrix, right };
}

/** A symmetric positive matrix as L·Lᵀ (Cholesky); null where it is not positive. */
export function cholesky(matrix: readonly (readonly number[])[]): number[][] | null {
  const lower: number[][] = [];
  for (const [i, row] of matrix.entries()) {
    const line: number[] = [];
    for (let j = 0; j <= i; j += 1) {
      const other = j === i ? line : (lower[j] ?? []);
      const rest = line.reduce((sum, a, k) => (k < j ? sum - a * (other[k] ?? 0) : sum), row[j] ?? 0);
      if (j === i && !(rest > 0)) return null;
      line.push(j === i ? Math.sqrt(rest) : rest / (other[j] ?? 1));
    }
    lower.push(line);
  }
  return lower;
}

/** x of L·Lᵀ·x = b. */
export function solved(lower: readonly (readonly number[])[], b: readonly number[]): number[] {
  const half: number[] = [];
  lower.forEach((row, i) => {
    half.push(((b[i] ?? 0) - half.reduce((sum, x, k) => sum + x * (row[k] ?? 0), 0)) / (row[i] ?? 1));
  });
  const x = [...half];
  for (let i = lower.length - 1; i >= 0; i -= 1) {
    const rest = x.reduce((sum, value, k) => (k > i ? sum + value * (lower[k]?.[i] ?? 0) : sum), 0);
    x[i] = ((half[i] ?? 0) - rest) / (lower[i]?.[i] ?? 1);
  }
  return x;
}

export const logDeterminant = (lower: readonly (readonly number[])[]) =>
  2 * lower.reduce((sum, row, i) => sum + Math.log(row[i] ?? 1), 0);

/** Levenberg (1944) and Marquardt (1963): from `start` downhill in so many steps. */
export function descend(
  off: (at: readonly number[]) => number[],
  start: readonly number[],
  steps: number,
): { at: readonly number[]; sum: number } {
  let [at, sum, damping] = [start, squares(off(start)), 1e-2];
  for (let i = 0; i < steps && damping < 1e8; i += 1) {
    const { matrix, right } = normal(slopeAt(off, at));
    const damped = matrix.map((row, k) => row.with(k, (row[k] ?? 0) * (1 + damping) + 1e-9));
    const lower = cholesky(damped);
    const way = lower ? solved(lower, right) : null;
    const next = way ? at.map((value, k) => value - (way[k] ?? 0)) : at;
    const there = way ? squares(off(next)) : Infinity;
    if (there < sum) {
      const gain = sum - there;
      [at, sum, damping] = [next, there, damping / 5];
      if (gain < 1e-4 * sum) break;
    } else damping *= 4;
  }
  return { at, sum };
}
