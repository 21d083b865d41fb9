import type { FamilyName, GridLine, Level } from '../frame/grid.ts';
import type { GridReader } from '../frame/grid-reader.ts';
import type { Mm } from '../frame/length.ts';
import type { Point } from '../frame/set-out.ts';

/** Eye of a grown person who stands. Common practice. */
export const EYE_HEIGHT_MM = 1500;
/** As far from a wall as one stands to see a bay of it. Common practice. */
const FROM_WALL_MM = 1000;

/** Where somebody can stand, said by the grid. */
export interface StandingPlace {
  /** Of the eye, in house coordinates. */
  readonly eye: Point;
  /** Label of the level stood on; null: the datum of a house without levels. */
  readonly level: string | null;
  /** Two opposite crossings of the bay, or the two ends of the wall's bay. */
  readonly between: readonly [mark: string, mark: string];
  /** Before a wall's bay: its line, and on which side of it, that of lower or higher positions; null: mid-room. */
  readonly before: {
    readonly family: FamilyName;
    readonly line: string;
    readonly side: 'lower' | 'higher';
    /** Beyond the outermost line: from a ladder or scaffold where the level is no ground. */
    readonly outside: boolean;
  } | null;
}

/**
 * On each level, from the lowest, the middle of each bay and a metre to both sides of each wall bay, outside
 * the outermost lines too. In one order for one grid; in house coordinates (mm).
 */
export function standingPlaces(reader: GridReader): StandingPlace[] {
  const { levels } = reader.grid;
  const standing: readonly (Level | null)[] = levels.length === 0 ? [null] : levels;
  return standing.flatMap((level) => [
    ...roomPlaces(reader, level),
    ...wallPlaces(reader, level, 'first'),
    ...wallPlaces(reader, level, 'second'),
  ]);
}

const baysOf = (lines: readonly GridLine[]) =>
  lines.slice(1).map((end, i) => [lines[i] as GridLine, end] as const);
const middle = (bay: readonly [GridLine, GridLine]) => (bay[0].at + bay[1].at) / 2;

function eyeAt(x: number, y: number, level: Level | null): Point {
  return { x: x as Mm, y: y as Mm, z: ((level?.height ?? 0) + EYE_HEIGHT_MM) as Mm };
}

function roomPlaces(reader: GridReader, level: Level | null): StandingPlace[] {
  const { first, second } = reader.grid;
  return baysOf(first.lines).flatMap((one) =>
    baysOf(second.lines).map((other) => ({
      eye: eyeAt(middle(one), middle(other), level),
      level: level?.label ?? null,
      between: [reader.mark(one[0], other[0]), reader.mark(one[1], other[1])] as const,
      before: null,
    })),
  );
}

function wallPlaces(reader: GridReader, level: Level | null, family: FamilyName): StandingPlace[] {
  const { first, second } = reader.grid;
  const [own, other] = family === 'first' ? [first.lines, second.lines] : [second.lines, first.lines];
  const mark = (line: GridLine, end: GridLine) =>
    family === 'first' ? reader.mark(line, end) : reader.mark(end, line);
  return own.flatMap((line, i) =>
    baysOf(other).flatMap((bay) =>
      (['lower', 'higher'] as const).map((side) => {
        const across = line.at + (side === 'lower' ? -FROM_WALL_MM : FROM_WALL_MM);
        const outside = side === 'lower' ? i === 0 : i === own.length - 1;
        const along = middle(bay);
        return {
          eye: family === 'first' ? eyeAt(across, along, level) : eyeAt(along, across, level),
          level: level?.label ?? null,
          between: [mark(line, bay[0]), mark(line, bay[1])] as const,
          before: { family, line: line.label, side, outside },
        };
      }),
    ),
  );
}
