import type { HalfSpace } from '../clip.ts';
import type { GridReader } from '../grid-reader.ts';
import type { Zone } from '../zone.ts';
import { zoneBody } from '../zone-body.ts';

type Pair = readonly [number, number];
/** All points of a plane with normal · p ≤ limit. */
interface HalfPlane {
  readonly normal: Pair;
  readonly limit: number;
}

/** Larger than any house (see contract/frame-shapes). */
const FAR = 20_000_000;
const EVERYWHERE: readonly Pair[] = [
  [-FAR, -FAR],
  [FAR, -FAR],
  [FAR, FAR],
  [-FAR, FAR],
];

/** What the plane of a line cuts out of a zone, as (along the line, height); empty where it misses it. */
export function zoneCut(zone: Zone, family: 'first' | 'second', at: number, reader: GridReader): Pair[] {
  const [across, along] = family === 'first' ? ([0, 1] as const) : ([1, 0] as const);
  return outline(zone, reader, ({ normal, limit }) => ({
    normal: [normal[along], normal[2]],
    limit: limit - normal[across] * at,
  }));
}

/** A zone from above, as (x, y). */
export function zoneShadow(zone: Zone, reader: GridReader): Pair[] {
  return outline(zone, reader, ({ normal, limit }) =>
    // What leans bounds it above and below; its sides are upright.
    Math.abs(normal[2]) > 1e-9 ? { normal: [0, 0], limit: 0 } : { normal: [normal[0], normal[1]], limit },
  );
}

function outline(zone: Zone, reader: GridReader, flatten: (space: HalfSpace) => HalfPlane): Pair[] {
  const read = zoneBody(zone, reader);
  return read.ok ? read.body.map(flatten).reduce(cutOff, [...EVERYWHERE]) : [];
}

/** Sutherland and Hodgman, "Reentrant polygon clipping", CACM 17 (1974), against one half plane. */
function cutOff(corners: Pair[], { normal, limit }: HalfPlane): Pair[] {
  const room = ([a, b]: Pair) => limit - normal[0] * a - normal[1] * b;
  return corners.flatMap((corner, i): Pair[] => {
    const next = corners[(i + 1) % corners.length] as Pair;
    const [here, there] = [room(corner), room(next)];
    const kept: Pair[] = here >= -1e-6 ? [corner] : [];
    // Only where the edge goes through, or a corner in the surface would be met twice.
    if ((here > 1e-6 && there < -1e-6) || (here < -1e-6 && there > 1e-6)) {
      const share = here / (here - there);
      kept.push([corner[0] + (next[0] - corner[0]) * share, corner[1] + (next[1] - corner[1]) * share]);
    }
    return kept;
  });
}
