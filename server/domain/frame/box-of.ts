import { cross, dot, type Convex, type Triple } from './clip.ts';

export interface Box {
  readonly low: Triple;
  readonly high: Triple;
}

const NEARLY_MM = 0.05;

/** The upright box about a bounded convex body (mm), from the corners in which its planes meet by threes. */
export function boxOf(body: Convex): Box {
  const corners = cornersOf(body);
  const bound = (pick: (...values: number[]) => number) =>
    [0, 1, 2].map((i) => pick(...corners.map((corner) => corner[i] ?? NaN))) as unknown as Triple;
  return { low: bound(Math.min), high: bound(Math.max) };
}

function cornersOf(body: Convex): Triple[] {
  const corners: Triple[] = [];
  for (const [i, a] of body.entries())
    for (const [j, b] of body.entries())
      for (const c of j > i ? body.slice(j + 1) : []) {
        const corner = meeting(a, b, c);
        if (corner && body.every(({ normal, limit }) => dot(normal, corner) <= limit + NEARLY_MM))
          corners.push(corner);
      }
  return corners;
}

/** Cramer's rule for three planes; null where two of them never meet or all do in a line. */
function meeting(a: Convex[number], b: Convex[number], c: Convex[number]): Triple | null {
  const [bc, ca, ab] = [cross(b.normal, c.normal), cross(c.normal, a.normal), cross(a.normal, b.normal)];
  const size = dot(a.normal, bc);
  if (Math.abs(size) < 1e-9) return null;
  const at = (i: 0 | 1 | 2) => (a.limit * bc[i] + b.limit * ca[i] + c.limit * ab[i]) / size;
  return [at(0), at(1), at(2)];
}
