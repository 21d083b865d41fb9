import type { LookView, ShotListView, ShotPlaceView, ShotView } from '#domain/contract/shot-views';
import { spreadApart, type Dot } from './spread-apart.ts';

type Grid = NonNullable<ShotListView['grid']>;

/** A place with its number in the walk. */
export interface NumberedPlace {
  readonly number: number;
  readonly place: ShotPlaceView;
}

export interface WalkPlan {
  readonly width: number;
  readonly height: number;
  readonly upright: readonly { label: string; x: number }[];
  readonly level: readonly { label: string; y: number }[];
  readonly missing: readonly { from: Dot; to: Dot }[];
  readonly spots: readonly Spot[];
}

export interface Spot extends Dot {
  readonly number: number;
  /** Which ways one looks, in degrees from rightward, clockwise. */
  readonly turns: readonly number[];
  /** Up or down as well. */
  readonly hasRing: boolean;
  /** Nothing is left to be photographed from there. */
  readonly isDone: boolean;
}

/** As wide as a phone: letters are then as large as they are said to be. */
const WIDE = 360;
const EDGE = 44;
export const DOT = 11;

/** The plan of a level, with its places in the order of the walk. Lines run as the grid says. */
export function planOfWalk(
  grid: Grid,
  places: readonly NumberedPlace[],
  isOpen: (shot: ShotView) => boolean = () => true,
): WalkPlan {
  const { first, second } = grid;
  const wide = sizeOf([...first.lines.map((line) => line.at), ...places.map(({ place }) => place.eye.x)]);
  const high = sizeOf([...second.lines.map((line) => line.at), ...places.map(({ place }) => place.eye.y)]);
  const scale = (WIDE - 2 * EDGE) / Math.max(wide.size, high.size * 0.8);
  const along = (at: number, { low, size }: Extent, isTurned: boolean) =>
    (isTurned ? low + size - at : at - low) * scale + EDGE;
  const x = (at: number) => along(at, wide, first.runs === 'leftward');
  const y = (at: number) => along(at, high, second.runs === 'upward');
  const at = (point: { x: number; y: number }): Dot => ({ x: x(point.x), y: y(point.y) });
  const dots = spreadApart(
    places.map(({ place }) => at(place.eye)),
    2 * DOT + 6,
  );
  const shots = places.flatMap(({ place }) => openShots(place, isOpen));
  return {
    width: wide.size * scale + 2 * EDGE,
    height: high.size * scale + 2 * EDGE,
    upright: first.lines.map(({ label, at: line }) => ({ label, x: x(line) })),
    level: second.lines.map(({ label, at: line }) => ({ label, y: y(line) })),
    missing: shots.flatMap(({ stretches }) =>
      stretches.map(({ start, end }) => ({ from: at(start), to: at(end) })),
    ),
    spots: places.map(({ number, place }, i) => ({
      ...(dots[i] ?? at(place.eye)),
      number,
      turns: place.turns.flatMap(({ look }) => turnOf(look, place, grid)),
      hasRing: place.turns.some(({ look }) => typeof look === 'string'),
      isDone: openShots(place, isOpen).length === 0,
    })),
  };
}

const openShots = ({ turns }: ShotPlaceView, isOpen: (shot: ShotView) => boolean) =>
  turns.flatMap(({ shots }) => shots).filter(isOpen);

interface Extent {
  readonly low: number;
  readonly size: number;
}

/** Lines and places: one also stands outside of the house. */
function sizeOf(positions: readonly number[]): Extent {
  const low = Math.min(...positions);
  return { low, size: Math.max(1, Math.max(...positions) - low) };
}

/** Straight towards the line that is looked at. */
function turnOf(look: LookView, { eye }: ShotPlaceView, { first, second }: Grid): number[] {
  if (typeof look === 'string') return [];
  const family = look.family === 'first' ? first : second;
  const line = family.lines.find(({ label }) => label === look.line);
  if (!line) return [];
  if (look.family === 'first') {
    const isRight = line.at > eye.x === (first.runs === 'rightward');
    return [isRight ? 0 : 180];
  }
  const isDown = line.at > eye.y === (second.runs === 'downward');
  return [isDown ? 90 : 270];
}
