import { STAGES, type Stage } from '../../stage.ts';
import type { InventedMember } from '../invented-house.ts';
import { COVERING_DAYS } from './coverings.ts';
import type { Lines } from './lines.ts';
import { kneeWalls, lowerWalls, type WallRun } from './walls.ts';

/** Days after the raising on which a member comes to its stages; before the first it lies in no picture. */
export type BuildDays = Readonly<Partial<Record<Stage, number>>>;

/** The lath of a wall is on so many days before its first coat: clay is mixed meanwhile. Common practice. */
export const LATH_BEFORE_COAT = 6;
const CUT = -20;

/** When pieces are raised and made fast, by kind: up from the stones, then the roof, then floors. */
const ERECTED: Readonly<Record<string, readonly [raised: number, pegged: number]>> = {
  足固め: [0, 2],
  管柱: [0, 4],
  地貫: [0, 6],
  腰貫: [0, 6],
  内法貫: [0, 6],
  天井貫: [0, 6],
  貫: [0, 6],
  床梁: [0, 3],
  胴差: [0, 3],
  桁: [1, 3],
  小屋梁: [1, 3],
  小屋束: [1, 4],
  棟束: [1, 4],
  母屋: [1, 3],
  棟木: [1, 3],
  小屋貫: [1, 6],
  垂木: [2, 4],
  火打: [2, 3],
  方杖: [3, 4],
  広小舞: [5, 5],
  筋かい: [9, 10],
  間柱: [10, 11],
  大引: [16, 18],
  床束: [16, 18],
  根太: [20, 22],
};
/** What belongs to the loft comes a day later, but its floor earlier: it is what the crew stands on. */
const ERECTED_ABOVE: typeof ERECTED = { ...ERECTED, 管柱: [1, 4], 地貫: [1, 7], 腰貫: [1, 7], 根太: [7, 8] };

/** How the build of a boathouse goes on: asked of its own members; throws RangeError for another kind of member. */
export function buildDaysOf(lines: Lines): (member: InventedMember) => BuildDays {
  const walls = {
    '1F': coatDays(lowerWalls(lines), COVERING_DAYS.lowerWall),
    '2F': coatDays(kneeWalls(lines), COVERING_DAYS.kneeWall),
  };
  return ({ mark, kind, setOut: { from, to, level } }) => {
    const [raised, pegged] = (level === '1F' ? ERECTED : ERECTED_ABOVE)[kind] ?? [];
    if (raised === undefined || pegged === undefined)
      throw new RangeError(`${mark} is no member of a boathouse.`);
    const ends = to === '' ? [from] : [from, to];
    const isOfWall = to === '' ? kind === '管柱' : kind.endsWith('貫') && kind !== '小屋貫';
    const coats =
      isOfWall && (level === '1F' || level === '2F')
        ? walls[level].filter(({ run }) => isIn(run, ends, lines))
        : [];
    const erected = { cut: CUT, raised, pegged };
    if (coats.length === 0) return erected;
    // A post stands in two walls at a corner, and is hidden by the later.
    const coat = Math.max(...coats.map(({ day }) => day));
    return { ...erected, 'lath-on': coat - LATH_BEFORE_COAT, plastered: coat };
  };
}

/** The furthest stage by a day; null before there is anything to be seen. */
export function stageBy(days: BuildDays, day: number): Stage | null {
  return STAGES.findLast((stage) => (days[stage] ?? Infinity) <= day) ?? null;
}

const coatDays = (runs: readonly WallRun[], from: number) => runs.map((run, i) => ({ run, day: from + i }));

/** Whether both ends, or the one of what stands, lie in a wall. */
function isIn(
  { family, line, from, to }: WallRun,
  ends: readonly string[],
  { first, second }: Lines,
): boolean {
  const labels = family === 'first' ? second : first;
  const [start, end] = [labels.indexOf(from), labels.indexOf(to)];
  const crossings = labels
    .slice(start, end + 1)
    .map((label) => (family === 'first' ? line + label : label + line));
  return ends.every((mark) => crossings.includes(mark));
}
