import type { FrameCoveringView, FrameHiddenView, FrameMemberView } from '../../contract/frame-views.ts';
import type { Stretch } from '../../record/stretches.ts';
import { stageRank, type Stage } from '../stage.ts';

/** Days are YYYY-MM-DD in the house's zone, so that they compare as text. */

/** The furthest stage on any photo by the end of a day; null: on none. */
export function stageOn({ seen }: Pick<FrameMemberView, 'seen'>, day: string): Stage | null {
  return seen.findLast((one) => one.day <= day)?.stage ?? null;
}

/**
 * How a hidden stretch stood on record: `not-yet` had no record then and has one today, `gap` has none, `lost`
 * had none when no face of it was open any more, `waived` has none by the release that stood then, and `hidden-before` is told of with an earlier layer.
 */
export type HiddenState = FrameHiddenView['state'] | 'not-yet';

type StandsOn = Pick<FrameHiddenView, 'state' | 'onRecordSince' | 'hiddenDay' | 'waivedDay'>;

export function hiddenOn({ state, onRecordSince, hiddenDay, waivedDay }: StandsOn, day: string): HiddenState {
  if (state === 'retired') return 'retired';
  if (onRecordSince !== null) return onRecordSince <= day ? 'on-record' : 'not-yet';
  if (state === 'on-record') return state;
  if (waivedDay !== null && waivedDay <= day) return 'waived';
  if (hiddenDay === null || day < hiddenDay) return 'gap';
  return state === 'hidden-before' ? state : 'lost';
}

export function isClosedOn({ closedDay }: Pick<FrameCoveringView, 'closedDay'>, day: string): boolean {
  return closedDay !== null && closedDay <= day;
}

/**
 * The parts of what is hidden that have no record by a day, where it is a gap or lost; null: the whole
 * member. Before the least stage was on any photo that is all of it; after that only today's parts are known.
 */
export function missingOn(
  { least, stretches, missing }: Pick<FrameHiddenView, 'least' | 'stretches' | 'missing'>,
  member: Pick<FrameMemberView, 'seen'>,
  day: string,
): readonly Stretch[] | null {
  const reached = stageOn(member, day);
  const isNone = reached === null || stageRank(reached) < stageRank(least);
  return isNone ? stretches : (missing ?? stretches);
}

/** All days on which the drawing of a frame changes, ascending. */
export function changeDays(frame: {
  readonly members: readonly Pick<FrameMemberView, 'seen'>[];
  readonly coverings: readonly {
    readonly closedDay: string | null;
    readonly hides: readonly Pick<FrameHiddenView, 'onRecordSince' | 'hiddenDay' | 'waivedDay'>[];
  }[];
}): string[] {
  const days = [
    ...frame.members.flatMap(({ seen }) => seen.map(({ day }) => day)),
    ...frame.coverings.flatMap(({ closedDay, hides }) => [
      closedDay,
      ...hides.flatMap(({ onRecordSince, hiddenDay, waivedDay }) => [onRecordSince, hiddenDay, waivedDay]),
    ]),
  ];
  return [...new Set(days.filter((day) => day !== null))].sort();
}
