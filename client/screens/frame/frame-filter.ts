import type { FrameMemberView } from '#domain/contract/frame-views';
import { hiddenOn, stageOn } from '#domain/frame/drawing/state-on';
import type { Stage } from '#domain/frame/stage';
import type { FrameModel } from './frame-model.ts';

/** '' is any. */
export interface FrameFilter {
  readonly level: string;
  readonly kind: string;
  readonly stage: '' | 'none' | Stage;
  /** Of what is hidden; 'open': nothing of it is. */
  readonly state: '' | (typeof RECORD_STATES)[number];
}

export const RECORD_STATES = ['gap', 'lost', 'on-record', 'open'] as const;

export const NO_FILTER: FrameFilter = { level: '', kind: '', stage: '', state: '' };

/** Whether a member is to be shown; null: all are. */
export function fitsIn(
  { level, kind, stage, state }: FrameFilter,
  model: FrameModel,
  day: string,
): ((mark: string) => boolean) | null {
  if (level === '' && kind === '' && stage === '' && state === '') return null;
  const fits = (member: FrameMemberView) =>
    (level === '' || member.axis?.level === level) &&
    (kind === '' || member.kind === kind) &&
    (stage === '' || (stageOn(member, day) ?? 'none') === stage) &&
    (state === '' || isInState(member.mark, state));
  const isInState = (mark: string, wanted: (typeof RECORD_STATES)[number]) => {
    const states = (model.hides.get(mark) ?? []).map(({ hidden }) => hiddenOn(hidden, day));
    // What came on record later was missing on that day.
    if (wanted === 'gap') return states.includes('gap') || states.includes('not-yet');
    return wanted === 'open' ? states.length === 0 : states.includes(wanted);
  };
  return (mark) => {
    const member = model.members.get(mark);
    return member !== undefined && fits(member);
  };
}
