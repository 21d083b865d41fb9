/** A point of a drawing, in mm: u to the right, v down. */
export interface Flat {
  readonly u: number;
  readonly v: number;
}

/** What is straight and of even thickness on a drawing: its middle line and half its thickness. */
export interface Strip {
  readonly from: Flat;
  readonly to: Flat;
  readonly half: number;
}

export interface Box {
  readonly left: number;
  readonly top: number;
  readonly right: number;
  readonly bottom: number;
}

/** The four corners of the part of a strip between two shares of its length. */
export function cornersOf({ from, to, half }: Strip, start = 0, end = 1): readonly Flat[] {
  const [du, dv] = [to.u - from.u, to.v - from.v];
  const length = Math.hypot(du, dv) || 1;
  const [nu, nv] = [(-dv / length) * half, (du / length) * half];
  const at = (share: number, side: number) => ({
    u: from.u + du * share + nu * side,
    v: from.v + dv * share + nv * side,
  });
  return [at(start, 1), at(end, 1), at(end, -1), at(start, -1)];
}

/** How far a point lies outside of a strip; 0 inside. */
export function distanceTo({ from, to, half }: Strip, { u, v }: Flat): number {
  const [du, dv] = [to.u - from.u, to.v - from.v];
  const length = Math.hypot(du, dv) || 1;
  const along = ((u - from.u) * du + (v - from.v) * dv) / length;
  const beside = Math.abs((u - from.u) * dv - (v - from.v) * du) / length;
  return Math.hypot(Math.max(0, -along, along - length), Math.max(0, beside - half));
}

/** The smallest box around points; null without any. */
export function boxAround(points: readonly Flat[]): Box | null {
  if (points.length === 0) return null;
  const box = { left: Infinity, top: Infinity, right: -Infinity, bottom: -Infinity };
  for (const { u, v } of points) {
    box.left = Math.min(box.left, u);
    box.right = Math.max(box.right, u);
    box.top = Math.min(box.top, v);
    box.bottom = Math.max(box.bottom, v);
  }
  return box;
}
