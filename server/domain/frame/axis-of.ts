import type { Crossing, Level } from './grid.ts';
import type { GridReader } from './grid-reader.ts';
import { facesOf, isPlausibleDepth } from './faces-of.ts';
import { roundMm, type Mm } from './length.ts';
import type { Axis, AxisProblem, Point, SetOut, UsualLie } from './set-out.ts';

export type ReadAxis =
  { readonly ok: true; readonly axis: Axis } | { readonly ok: false; readonly problem: AxisProblem };

/** What is drawn where neither schedule nor kind says a section: 3.5 sun, common practice. */
const PLAIN_SECTION = [105, 105] as const;
const SHORTEST_MM = 1;
/** Steeper than this is upright, flatter than its complement level; a wind-leaned post is still a post. */
const STEEP_DEG = 85;

/**
 * The axis of a member from what the schedule states, the grid, and what is usual for its kind: what
 * stands goes from its level to the next, what lies is at its level, unless heights are stated; midway
 * between its faces where these are; what slopes needs a top. Which way it runs follows from its two ends.
 * Says the first thing that cannot be.
 */
export function axisOf(stated: SetOut, usual: UsualLie, reader: GridReader): ReadAxis {
  const from = readEnd(stated.from, 'from', reader);
  if ('reason' in from) return refuse(from);
  const stands = stated.to.trim() === '';
  if (stands && (usual.lies === 'level' || usual.lies === 'sloping')) return problem('to-missing', 'to');
  const to = stands ? from : readEnd(stated.to, 'to', reader);
  if ('reason' in to) return refuse(to);
  const isUpright = from.x === to.x && from.y === to.y;
  const setOut = isUpright ? stated : betweenFaces(stated, usual);
  if (setOut.top === null && usual.lies === 'level' && isUpright) return problem('no-length', 'to');
  // Drawn flat, a rafter would lie outside the roof that hides it.
  if (setOut.top === null && usual.lies === 'sloping') return problem('top-missing', 'top');
  const heights = heightsOf(setOut, isUpright, reader);
  if ('reason' in heights) return refuse(heights);
  const [start, end] = [at(from, heights.base), at(to, heights.top)];
  const length = distance(start, end);
  if (!(length >= SHORTEST_MM)) return problem('no-length', isUpright ? 'top' : 'to');
  const section = sectionOf(setOut, usual, reader);
  if ('reason' in section) return refuse(section);
  return {
    ok: true,
    axis: {
      start,
      end,
      length,
      ...section.size,
      runs: runOf(start, end),
      level: heights.level,
      assumed: [...heights.assumed, ...section.assumed],
    },
  };
}

/**
 * What lies is midway between its faces, which say its depth too where the schedule does not; below a top
 * alone by half of its depth.
 */
function betweenFaces(stated: SetOut, usual: UsualLie): SetOut {
  if (usual.lies !== 'level' || stated.top === null) return stated;
  const faces = facesOf(stated, usual);
  if (faces) {
    const isDepth = stated.depth === null && isPlausibleDepth(faces, null);
    const depth = isDepth ? faces.top - faces.underside : stated.depth;
    return { ...stated, ...levelAt((faces.underside + faces.top) / 2), depth };
  }
  if (stated.base !== null) return stated;
  const [, usualDepth] = usual.section ?? PLAIN_SECTION;
  return { ...stated, ...levelAt(stated.top - (stated.depth ?? usualDepth) / 2) };
}

const levelAt = (height: number) => ({ base: height, top: height });

const problem = (reason: AxisProblem['reason'], field: AxisProblem['field']) =>
  ({ ok: false, problem: { reason, field } }) as const;
const refuse = (found: AxisProblem) => ({ ok: false, problem: found }) as const;

function readEnd(text: string, field: 'from' | 'to', reader: GridReader): Crossing | AxisProblem {
  if (text.trim() === '') return { reason: `${field}-missing`, field };
  const read = reader.crossing(text);
  return read.ok ? read.value : { reason: `${read.problem}-mark`, field };
}

type Heights = { base: Mm; top: Mm; level: string | null; assumed: ('base' | 'top')[] };

function heightsOf(
  { level: name, base: statedBase, top: statedTop }: SetOut,
  isUpright: boolean,
  reader: GridReader,
): Heights | AxisProblem {
  const { levels } = reader.grid;
  const stated = name.trim() === '' ? null : reader.level(name);
  if (stated === undefined) return { reason: 'unknown-level', field: 'level' };
  // Without a named level heights are above the datum, and what states none stands on the lowest level.
  const zero = stated?.height ?? 0;
  const base = statedBase === null ? (stated?.height ?? levels[0]?.height ?? 0) : zero + statedBase;
  const own = stated ?? levelOf(base, levels);
  // From the level it stands on to the next, also where its foot is let in a little below its level.
  const next = levels.find(({ height }) => height > Math.max(base, own?.height ?? base))?.height;
  const top = statedTop === null ? (isUpright ? next : base) : zero + statedTop;
  if (top === undefined) return { reason: 'top-missing', field: 'top' };
  if (top < base) return { reason: 'base-above-top', field: statedBase === null ? 'top' : 'base' };
  return {
    base: roundMm(base),
    top: roundMm(top),
    level: own?.label ?? null,
    assumed: [
      ...(statedBase === null ? (['base'] as const) : []),
      ...(statedTop === null && isUpright ? (['top'] as const) : []),
    ],
  };
}

/** A beam hangs below the level whose floor it bears. */
const LEVEL_SLACK_MM = 400;

function levelOf(base: number, levels: readonly Level[]): Level | undefined {
  return (
    levels.find(({ height }) => height === base) ??
    levels.findLast(({ height }) => height <= base + LEVEL_SLACK_MM) ??
    levels[0]
  );
}

function sectionOf(
  stated: SetOut,
  { section }: UsualLie,
  reader: GridReader,
): { size: { width: Mm; depth: Mm }; assumed: 'section'[] } | AxisProblem {
  const { width, depth } = stated;
  const [usualWidth, usualDepth] = section ?? PLAIN_SECTION;
  const size = { width: roundMm(width ?? usualWidth), depth: roundMm(depth ?? usualDepth) };
  const bay = widestBay(reader);
  for (const field of ['width', 'depth'] as const) {
    if (!(size[field] > 0)) return { reason: 'section-impossible', field };
    if (stated[field] !== null && size[field] > bay) return { reason: 'section-larger-than-bay', field };
  }
  return { size, assumed: width === null || depth === null ? ['section'] : [] };
}

/** A slip of the unit; the widest, since a beam may well be higher than an alcove's bay is wide. */
function widestBay({ grid }: GridReader): number {
  const bays = [grid.first, grid.second].flatMap(({ lines }) =>
    lines.slice(1).map(({ at: here }, i) => here - (lines[i]?.at ?? here)),
  );
  return bays.length === 0 ? Infinity : Math.max(...bays);
}

const at = ({ x, y }: Crossing, z: Mm): Point => ({ x, y, z });

export function distance(a: Point, b: Point): Mm {
  return roundMm(Math.hypot(b.x - a.x, b.y - a.y, b.z - a.z));
}

function runOf(start: Point, end: Point): Axis['runs'] {
  const plan = Math.hypot(end.x - start.x, end.y - start.y);
  const steepness = (Math.atan2(Math.abs(end.z - start.z), plan) * 180) / Math.PI;
  if (steepness >= STEEP_DEG) return 'upright';
  return steepness <= 90 - STEEP_DEG ? 'level' : 'sloping';
}

/** The point of an axis so far from its start, also beyond its ends. */
export function pointOn({ start, end, length }: Axis, along: number): Point {
  const share = along / length;
  return {
    x: roundMm(start.x + (end.x - start.x) * share),
    y: roundMm(start.y + (end.y - start.y) * share),
    z: roundMm(start.z + (end.z - start.z) * share),
  };
}
