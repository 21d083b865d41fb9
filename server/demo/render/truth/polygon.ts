/** A point of a picture, in pixels; its outer corner is 0, 0. */
export type Px = readonly [x: number, y: number];

/** The convex hull, clockwise as a picture shows it: A. Andrew's two chains, IPL 9 (1979). */
export function hullOf(points: readonly Px[]): Px[] {
  const sorted = [...points].sort((a, b) => a[0] - b[0] || a[1] - b[1]);
  if (sorted.length < 3) return sorted;
  return [...chain(sorted), ...chain(sorted.reverse())];
}

/** One side of the hull without its last point, with which the other begins. */
function chain(sorted: readonly Px[]): Px[] {
  const side: Px[] = [];
  for (const point of sorted) {
    while (side.length > 1 && turn(side.at(-2)!, side.at(-1)!, point) <= 0) side.pop();
    side.push(point);
  }
  return side.slice(0, -1);
}

const turn = ([ax, ay]: Px, [bx, by]: Px, [cx, cy]: Px) => (bx - ax) * (cy - ay) - (by - ay) * (cx - ax);

export function areaOf(polygon: readonly Px[]): number {
  const twice = polygon.reduce((sum, [x, y], i) => {
    const [nextX, nextY] = polygon[(i + 1) % polygon.length]!;
    return sum + x * nextY - nextX * y;
  }, 0);
  return Math.abs(twice) / 2;
}

/** What of a convex polygon lies in the picture: I. Sutherland and G. Hodgman, CACM 17 (1974). */
export function inPicture(polygon: readonly Px[], width: number, height: number): Px[] {
  const sides: ((point: Px) => number)[] = [
    ([x]) => x,
    ([x]) => width - x,
    ([, y]) => y,
    ([, y]) => height - y,
  ];
  return sides.reduce((rest: readonly Px[], inside) => cut(rest, inside), polygon).slice();
}

function cut(polygon: readonly Px[], inside: (point: Px) => number): Px[] {
  return polygon.flatMap((point, i) => {
    const before = polygon.at(i - 1)!;
    const [from, to] = [inside(before), inside(point)];
    const crossing = from < 0 === to < 0 ? [] : [between(before, point, from / (from - to))];
    return to < 0 ? crossing : [...crossing, point];
  });
}

const between = ([ax, ay]: Px, [bx, by]: Px, share: number): Px => [
  ax + (bx - ax) * share,
  ay + (by - ay) * share,
];

/** Whether a point lies in a convex polygon, its sides included. */
export function isIn(polygon: readonly Px[], point: Px): boolean {
  const turns = polygon.map((corner, i) => turn(corner, polygon[(i + 1) % polygon.length]!, point));
  return polygon.length > 2 && (turns.every((t) => t >= 0) || turns.every((t) => t <= 0));
}
