import type { Flat } from '#domain/frame/drawing/flat';
import type { Sheet } from '#domain/frame/drawing/sheet';
import { OTHER_FAMILY, planView, rightward } from '#domain/frame/drawing/views';
import type { LinePlace } from '#domain/frame/grid';
import type { GridReader } from '#domain/frame/grid-reader';
import type { Zone } from '#domain/frame/zone';

/** A drag from one corner to the other as a zone, its ends at the nearest lines and heights; null: too small. */
export function draggedZone(
  sheet: Sheet,
  from: Flat,
  to: Flat,
  reader: GridReader,
  before: Zone | null,
  heights: { readonly bottom: number; readonly top: number },
): Zone | null {
  return sheet.subject.kind === 'elevation'
    ? wallFrom(sheet, from, to, reader, before)
    : flatFrom(from, to, reader, before?.shape === 'flat' ? before : heights);
}

function wallFrom(sheet: Sheet, from: Flat, to: Flat, reader: GridReader, before: Zone | null): Zone | null {
  if (sheet.subject.kind !== 'elevation') return null;
  const { family, line } = sheet.subject;
  const along = OTHER_FAMILY[family];
  const sign = rightward(reader.grid, along);
  const ends = [from, to]
    .map(({ u }) => nearest(reader.places(along), sign * u))
    .sort((a, b) => (a?.at ?? 0) - (b?.at ?? 0));
  const heights = heightsOf(sheet).map((height) => ({ at: height }));
  const [low, high] = [from, to].map(({ v }) => nearest(heights, -v)?.at ?? 0).sort((a, b) => a - b);
  const [start, end] = ends;
  if (!start || !end || start.at === end.at || low === undefined || high === undefined || low === high)
    return null;
  const kept = before?.shape === 'wall' ? before : ({ face: 'both', over: 'between-posts' } as const);
  return {
    ...{ shape: 'wall', family, line: line.label, from: start.label, to: end.label },
    ...{ bottom: low, top: high, face: kept.face, over: kept.over },
  };
}

/** The levels, and where what stands in the sheet begins and ends. */
export function heightsOf({ level, members }: Sheet): number[] {
  const ends = members.flatMap(({ from, to, cutAt }) => (cutAt === null ? [-from.v, -to.v] : []));
  return [...new Set([...level.map(({ stated }) => stated), ...ends.map((height) => height + 0)])];
}

function flatFrom(
  from: Flat,
  to: Flat,
  reader: GridReader,
  { bottom, top }: { readonly bottom: number; readonly top: number },
): Zone | null {
  const [a, b] = [crossingAt(from, reader), crossingAt(to, reader)];
  if (!a || !b || a.first.at === b.first.at || a.second.at === b.second.at) return null;
  return {
    shape: 'flat',
    corners: [reader.mark(a.first, a.second), reader.mark(b.first, b.second)],
    ...{ bottom, top },
  };
}

function crossingAt({ u, v }: Flat, reader: GridReader): { first: LinePlace; second: LinePlace } | null {
  // The view of a plan only turns round, so that it is its own way back.
  const at = planView(reader.grid)({ x: u as LinePlace['at'], y: v as LinePlace['at'] });
  const [first, second] = [nearest(reader.places('first'), at.u), nearest(reader.places('second'), at.v)];
  return first && second ? { first, second } : null;
}

function nearest<P extends { readonly at: number }>(places: readonly P[], at: number): P | null {
  return places.reduce<P | null>(
    (best, place) => (!best || Math.abs(place.at - at) < Math.abs(best.at - at) ? place : best),
    null,
  );
}

/** What a floor or ceiling usually hides below itself: the timbers that bear it. Common practice. */
const BEARING_MM = 300;

/** Between which heights a flat covering on a level hides, until somebody says otherwise. */
export function usualHeights(
  kind: string,
  sheet: Sheet,
  reader: GridReader,
): { bottom: number; top: number } {
  const { subject } = sheet;
  const here = subject.kind === 'plan' ? (subject.level?.height ?? 0) : 0;
  const above = reader.grid.levels.find(({ height }) => height > here)?.height;
  // A ceiling hides what bears the floor above it.
  if (kind === 'ceiling' && above !== undefined) return { bottom: above - BEARING_MM, top: above };
  return { bottom: here - BEARING_MM, top: here };
}
