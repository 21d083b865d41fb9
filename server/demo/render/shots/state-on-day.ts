import { boathouse } from '#domain/frame/invented/boathouse/boathouse';
import { LATH_BEFORE_COAT, buildDaysOf, stageBy } from '#domain/frame/invented/boathouse/build-days';
import { COVERING_DAYS } from '#domain/frame/invented/boathouse/coverings';
import { linesOf } from '#domain/frame/invented/boathouse/lines';
import { USUAL_SIZE } from '#domain/frame/invented/boathouse/measures';
import { kneeWalls, lowerWalls, type WallRun } from '#domain/frame/invented/boathouse/walls';
import type { InventedMember } from '#domain/frame/invented/invented-house';
import type { Stage } from '#domain/frame/stage';
import { stateOf, type Boards, type HouseState, type Infill, type WallZone } from '../scene/house-state.ts';

/** Any day: the house is the same. */
export const HOUSE = boathouse('2026-04-01');
const LINES = linesOf(USUAL_SIZE);
const daysOf = buildDaysOf(LINES);

export interface Moment {
  /** After the raising. */
  readonly day: number;
  /** How much of what is done on that very day is done, 0 to 1; by its evening all of it. */
  readonly done?: number;
  /** Marks of members over which a sheet hangs. */
  readonly sheets?: readonly string[];
}

/** The house as its build calendar has it, each time the same. */
export function stateOnDay({ day, done = 1, sheets = [] }: Moment): HouseState {
  return stateOf(HOUSE, {
    stageOf: (member) => stageAt(member, day, done),
    walls: [
      ...wallsBy(lowerWalls(LINES), COVERING_DAYS.lowerWall, { day, done }),
      ...wallsBy(kneeWalls(LINES), COVERING_DAYS.kneeWall, { day, done }),
    ],
    boards: roofsBy({ day, done }),
    sheets,
  });
}

/** Frames are raised one after the other, from the west: what reaches beyond is still on the ground. */
function stageAt(member: InventedMember, day: number, done: number): Stage | null {
  const days = daysOf(member);
  const isWaiting = days.raised === day && farLine(member) > done * (LINES.first.length - 1);
  return stageBy(days, isWaiting ? day - 1 : day);
}

function farLine({ setOut: { from, to } }: InventedMember): number {
  return LINES.first.findLastIndex((label) => from.includes(label) || to.includes(label));
}

type Progress = Required<Pick<Moment, 'day' | 'done'>>;

function wallsBy(runs: readonly WallRun[], coatFrom: number, { day, done }: Progress): Infill[] {
  return runs.flatMap((run, i) => {
    const lathDay = coatFrom + i - LATH_BEFORE_COAT;
    if (day < lathDay) return [];
    const infill = day < coatFrom + i ? 'lath' : 'rough';
    return baysOf(run).map((zone) => ({ zone, infill, laid: day === lathDay ? done : 1 }));
  });
}

function baysOf(run: WallRun): WallZone[] {
  const whole = HOUSE.coverings.find(({ name }) => name === `${run.name} 荒壁`)?.zone;
  if (whole?.shape !== 'wall') throw new RangeError(`The boathouse has no ${run.name}.`);
  const labels = run.family === 'first' ? LINES.second : LINES.first;
  const [start, end] = [labels.indexOf(run.from), labels.indexOf(run.to)];
  return labels.slice(start, end).map((from, i) => ({ ...whole, from, to: labels[start + i + 1] ?? '' }));
}

/** Between the zone's surface, which is reckoned plumb over the rafters, and their upper side. */
const ROOF_LIFT_MM = -41;
const ROOF_BOARD_MM = 15;

function roofsBy({ day, done }: Progress): Boards[] {
  const roofs = HOUSE.coverings.filter(({ kind }) => kind === 'roof-boards');
  return roofs.flatMap(({ zone }, i): Boards[] => {
    const roofDay = COVERING_DAYS.roof + i;
    if (zone.shape !== 'slope' || day < roofDay) return [];
    const laid = day === roofDay ? done : 1;
    return [{ zone, lift: ROOF_LIFT_MM, thick: ROOF_BOARD_MM, along: 'x', laid }];
  });
}
