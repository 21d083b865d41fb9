import type { FrameMemberView } from '#domain/contract/frame-views';
import { stageOn } from '#domain/frame/drawing/state-on';
import type { Stage } from '#domain/frame/stage';
import type { FrameModel } from './frame-model.ts';

/** '' is any. */
export interface FrameFilter {
  readonly level: string;
  readonly kind: string;
  readonly stage: '' | 'none' | Stage;
}

export const NO_FILTER: FrameFilter = { level: '', kind: '', stage: '' };

/** Whether a member is to be shown; null: all are. */
export function fitsIn(
  { level, kind, stage }: FrameFilter,
  model: FrameModel,
  day: string,
): ((mark: string) => boolean) | null {
  if (level === '' && kind === '' && stage === '') return null;
  const fits = (member: FrameMemberView) =>
    (level === '' || member.axis?.level === level) &&
    (kind === '' || member.kind === kind) &&
    (stage === '' || (stageOn(member, day) ?? 'none') === stage);
  return (mark) => {
    const member = model.members.get(mark);
    return member !== undefined && fits(member);
  };
}
