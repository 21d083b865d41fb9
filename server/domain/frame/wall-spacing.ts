import type { Stretch } from '../record/stretches.ts';
import { pointOn } from './axis-of.ts';
import type { GridReader } from './grid-reader.ts';
import { roundMm } from './length.ts';
import type { WallFigure } from './wall-rules.ts';
import { marksOf, nothing, type Finding, type InWall } from './wall-sections.ts';
import type { Zone } from './zone.ts';

type Wall = Extract<Zone, { shape: 'wall' }>;

/** Where a member lies in the elevation of a wall, in mm: along the wall, and how high in its middle. */
interface Placed {
  readonly member: InWall;
  readonly low: number;
  readonly high: number;
  readonly at: number;
  readonly thick: number;
}

/** Bays of the wall between the lines of the other family that cross it. */
function baysOf({ family, from, to }: Wall, reader: GridReader): Stretch[] {
  const other = family === 'first' ? 'second' : 'first';
  const ends = [reader.line(from, other), reader.line(to, other)].map((line) =>
    line.ok ? line.value.at : NaN,
  );
  const [low, high] = [Math.min(...ends), Math.max(...ends)];
  const between = reader.grid[other].lines
    .map(({ at }) => at as number)
    .filter((at) => at > low && at < high);
  const cuts = [low, ...between, high];
  return cuts.slice(1).map((end, i) => ({ from: cuts[i] ?? low, to: end }));
}

function lyingIn({ family }: Wall, member: InWall): Placed {
  const { axis, stretch } = member;
  const [a, b] = [pointOn(axis, stretch.from), pointOn(axis, stretch.to)];
  const along = family === 'first' ? [a.y, b.y] : [a.x, b.x];
  return {
    member,
    low: Math.min(...along),
    high: Math.max(...along),
    at: (a.z + b.z) / 2,
    thick: axis.depth,
  };
}

function standingIn({ family }: Wall, member: InWall): Placed {
  const { axis, stretch } = member;
  const [a, b] = [pointOn(axis, stretch.from), pointOn(axis, stretch.to)];
  return {
    member,
    low: Math.min(a.z, b.z),
    high: Math.max(a.z, b.z),
    at: family === 'first' ? (a.y + b.y) / 2 : (a.x + b.x) / 2,
    thick: family === 'first' ? axis.depth : axis.width,
  };
}

/** Of a bay it fills at least half. */
const fills = ({ low, high }: Placed, bay: Stretch) =>
  Math.min(high, bay.to) - Math.max(low, bay.from) >= (bay.to - bay.from) / 2;
const hasNoPlace = ({ axis }: InWall) => axis.assumed.includes('base');

/** The fewest in any bay of the wall; a member counts in a bay of which it fills at least half. */
export function countInBays(
  members: readonly InWall[],
  zone: Wall,
  figure: WallFigure,
  reader: GridReader,
): Finding {
  if (members.length === 0) return nothing(figure);
  const placed = members.map((member) => lyingIn(zone, member));
  const fewest = Math.min(
    ...baysOf(zone, reader).map((bay) => placed.filter((one) => fills(one, bay)).length),
  );
  return {
    figure,
    measured: fewest,
    isWithin: fewest >= figure.limit,
    because: null,
    looked: marksOf(members),
    differing: [],
  };
}

/**
 * The widest distance between neighbours, middle to middle: of what lies from one up to the next in each bay, of what
 * stands from one along to the next. Which of both readings is meant was not seen, so what is within the limit only
 * between edges is not told.
 */
export function widestSpacing(
  members: readonly InWall[],
  zone: Wall,
  figure: WallFigure,
  reader: GridReader,
): Finding {
  if (members.length === 0) return nothing(figure);
  const looked = marksOf(members);
  const lying = members.filter(({ axis }) => axis.runs === 'level').map((member) => lyingIn(zone, member));
  const standing = members
    .filter(({ axis }) => axis.runs === 'upright')
    .map((member) => standingIn(zone, member));
  const rows = [
    ...baysOf(zone, reader).map((bay) => lying.filter((one) => fills(one, bay))),
    ...byBay(standing, zone, reader),
  ];
  const gaps = rows.flatMap(gapsOf);
  const plain = { figure, looked, differing: [], isWithin: false, measured: null };
  if (lying.some(({ member }) => hasNoPlace(member)) || gaps.length === 0)
    return { ...plain, because: 'place-unknown' };
  const [widest] = gaps.sort((a, b) => b.middles - a.middles);
  const measured = widest?.middles ?? null;
  const wide = gaps.filter(({ middles }) => middles > figure.limit);
  if (wide.length === 0) return { ...plain, measured, isWithin: true, because: null };
  const differing = wide.filter(({ edges }) => edges > figure.limit);
  if (differing.every(({ isAssumed }) => isAssumed))
    return { ...plain, measured, because: differing.length === 0 ? 'reading' : 'section-assumed' };
  return {
    ...plain,
    measured,
    because: null,
    differing: [...new Set(differing.flatMap(({ marks }) => marks))],
  };
}

function byBay(standing: readonly Placed[], zone: Wall, reader: GridReader): Placed[][] {
  return baysOf(zone, reader).map((bay) => standing.filter(({ at }) => at >= bay.from && at <= bay.to));
}

function gapsOf(row: readonly Placed[]) {
  const sorted = [...row].sort((a, b) => a.at - b.at);
  return sorted.slice(1).flatMap((next, i) => {
    const before = sorted[i];
    if (!before) return [];
    const middles = roundMm(next.at - before.at);
    const pair = [before.member, next.member];
    return {
      middles,
      edges: middles - (before.thick + next.thick) / 2,
      isAssumed: pair.some(({ axis }) => axis.assumed.includes('section')),
      marks: marksOf(pair),
    };
  });
}
