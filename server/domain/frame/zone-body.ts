import type { Convex, HalfSpace } from './clip.ts';
import type { FamilyName } from './grid.ts';
import type { GridReader } from './grid-reader.ts';
import { WALL_REACH_MM, type Zone, type ZoneProblem } from './zone.ts';

export type ReadZone =
  { readonly ok: true; readonly body: Convex } | { readonly ok: false; readonly problem: ZoneProblem };

type XY = readonly [x: number, y: number];

const refuse = (reason: ZoneProblem['reason'], field: string) =>
  ({ ok: false, problem: { reason, field } }) as const;

/** A zone as a convex body in house coordinates, or the first thing that is wrong with it. */
export function zoneBody(zone: Zone, reader: GridReader): ReadZone {
  switch (zone.shape) {
    case 'wall':
      return wallBody(zone, reader);
    case 'flat':
      return flatBody(zone, reader);
    case 'slope':
      return slopeBody(zone, reader);
  }
}

const OTHER = { first: 'second', second: 'first' } as const satisfies Record<FamilyName, FamilyName>;

/** The axis across a family's lines: the first lines stand at x, the second at y. */
const along = (family: FamilyName, size: number): HalfSpace['normal'] =>
  family === 'first' ? [size, 0, 0] : [0, size, 0];

function between(normal: HalfSpace['normal'], low: number, high: number): HalfSpace[] {
  const back: HalfSpace['normal'] = [-normal[0], -normal[1], -normal[2]];
  return [
    { normal, limit: high },
    { normal: back, limit: -low },
  ];
}

const UP = [0, 0, 1] as const;

function wallBody(zone: Extract<Zone, { shape: 'wall' }>, reader: GridReader): ReadZone {
  const line = reader.line(zone.line, zone.family);
  if (!line.ok) return refuse('unknown-line', 'line');
  const span = spanOf(zone, OTHER[zone.family], reader);
  if ('reason' in span) return { ok: false, problem: span };
  if (!(zone.top - zone.bottom >= 1)) return refuse('no-height', 'top');
  const across = along(zone.family, 1);
  return {
    ok: true,
    body: [
      ...between(across, line.value.at - WALL_REACH_MM, line.value.at + WALL_REACH_MM),
      ...between(along(OTHER[zone.family], 1), span.low, span.high),
      ...between(UP, zone.bottom, zone.top),
    ],
  };
}

function spanOf(
  { from, to }: { from: string; to: string },
  family: FamilyName,
  reader: GridReader,
): { low: number; high: number } | ZoneProblem {
  const [a, b] = [reader.line(from, family), reader.line(to, family)];
  if (!a.ok) return { reason: 'unknown-line', field: 'from' };
  if (!b.ok) return { reason: 'unknown-line', field: 'to' };
  const [low, high] = [Math.min(a.value.at, b.value.at), Math.max(a.value.at, b.value.at)];
  return high - low < 1 ? { reason: 'no-width', field: 'to' } : { low, high };
}

function flatBody(zone: Extract<Zone, { shape: 'flat' }>, reader: GridReader): ReadZone {
  if (!(zone.top - zone.bottom >= 1)) return refuse('no-height', 'top');
  const points: XY[] = [];
  for (const corner of zone.corners) {
    const read = reader.crossing(corner);
    if (!read.ok) return refuse('unknown-corner', corner);
    points.push([read.value.x, read.value.y]);
  }
  if (points.length < 2) return refuse('too-few-corners', 'corners');
  const polygon = points.length === 2 ? rectangle(points as [XY, XY]) : points;
  const sides = sidesOf(polygon);
  return Array.isArray(sides)
    ? { ok: true, body: [...sides, ...between(UP, zone.bottom, zone.top)] }
    : refuse(sides, 'corners');
}

function rectangle([[ax, ay], [bx, by]]: [XY, XY]): XY[] {
  return [
    [ax, ay],
    [bx, ay],
    [bx, by],
    [ax, by],
  ];
}

/** Half-spaces of a convex polygon; corners in either turning, corners in a straight side allowed. */
function sidesOf(corners: readonly XY[]): HalfSpace[] | 'no-width' | 'not-convex' {
  if (isStraight(corners)) return 'no-width';
  const area = corners.reduce((sum, [x, y], i) => {
    const [nx, ny] = corners[(i + 1) % corners.length] as XY;
    return sum + (x * ny - nx * y) / 2;
  }, 0);
  const turned = area > 0 ? corners : [...corners].reverse();
  const sides = turned.flatMap(([x, y], i): HalfSpace[] => {
    const [nx, ny] = turned[(i + 1) % turned.length] as XY;
    const length = Math.hypot(nx - x, ny - y);
    if (length < 1) return [];
    const normal = [(ny - y) / length, (x - nx) / length, 0] as const;
    return [{ normal, limit: normal[0] * x + normal[1] * y }];
  });
  const isConvex = turned.every(([x, y]) =>
    sides.every(({ normal, limit }) => normal[0] * x + normal[1] * y <= limit + 0.01),
  );
  // A star's corners turn one way too, but more than once around.
  const turns = sides.reduce(
    (sum, side, i) => sum + turn(side, sides[(i + 1) % sides.length] as HalfSpace),
    0,
  );
  return isConvex && Math.abs(turns - 2 * Math.PI) < 1e-6 ? sides : 'not-convex';
}

/** All within a millimetre of one line; a bow-tie has no area either, but has width. */
function isStraight(corners: readonly XY[]): boolean {
  const [ox, oy] = corners[0] as XY;
  const arms = corners.map(([x, y]): XY => [x - ox, y - oy]);
  const [lx, ly] = arms.reduce((far, arm) => (Math.hypot(...arm) > Math.hypot(...far) ? arm : far));
  const length = Math.hypot(lx, ly);
  return length < 1 || arms.every(([x, y]) => Math.abs(lx * y - ly * x) < length);
}

function turn({ normal: [ax, ay] }: HalfSpace, { normal: [bx, by] }: HalfSpace): number {
  return Math.atan2(ax * by - ay * bx, ax * bx + ay * by);
}

function slopeBody(zone: Extract<Zone, { shape: 'slope' }>, reader: GridReader): ReadZone {
  const [eaves, ridge] = [reader.line(zone.eaves, zone.family), reader.line(zone.ridge, zone.family)];
  if (!eaves.ok) return refuse('unknown-line', 'eaves');
  if (!ridge.ok) return refuse('unknown-line', 'ridge');
  const span = spanOf(zone, OTHER[zone.family], reader);
  if ('reason' in span) return { ok: false, problem: span };
  const [low, high] = [eaves.value.at, ridge.value.at];
  if (Math.abs(high - low) < 1) return refuse('no-width', 'ridge');
  if (!(zone.below >= 1)) return refuse('no-height', 'below');
  // The surface z = h + slope · p as a normal of length one.
  const slope = (zone.ridgeHeight - zone.eavesHeight) / (high - low);
  const size = Math.hypot(slope, 1);
  const lean = along(zone.family, -slope / size);
  const normal = [lean[0], lean[1], 1 / size] as const;
  const limit = (zone.eavesHeight - slope * low) / size;
  return {
    ok: true,
    body: [
      ...between(normal, limit - zone.below, limit),
      ...between(along(zone.family, 1), Math.min(low, high), Math.max(low, high)),
      ...between(along(OTHER[zone.family], 1), span.low, span.high),
    ],
  };
}
