import type { MemberHistoryView } from '#domain/contract/views';
import type { Stage } from '#domain/frame/stage';
import type { Words } from '../../i18n/words.ts';

export type StageInterval = MemberHistoryView['stages'][number];

/** As much of it as its words need. */
interface Interval {
  readonly stage: Stage;
  readonly after: { readonly instant: string } | null;
  readonly by: { readonly instant: string; readonly stage: Stage } | null;
}

/** No photo shows the stage: a later one shows the member past it. */
export function isInferred({ stage, by }: Pick<Interval, 'stage' | 'by'>): boolean {
  return by !== null && by.stage !== stage;
}

/** An interval in words: a stage is never known as a date, only as after one photo and by another. */
export function stageIntervalWords(t: Words, interval: Interval, when: (instant: string) => string): string {
  const { stage, after, by } = interval;
  if (by && isInferred(interval)) {
    const words = {
      by: when(by.instant),
      seen: t(`common.stage.${by.stage}`),
      stage: t(`common.stage.${stage}`),
    };
    return after
      ? t('members.history.inferredAfter', { ...words, after: when(after.instant) })
      : t('members.history.inferred', words);
  }
  if (after && by) return t('members.history.both', { after: when(after.instant), by: when(by.instant) });
  if (by) return t('members.history.onlyBy', { by: when(by.instant) });
  if (after) return t('members.history.onlyAfter', { after: when(after.instant) });
  return t('members.history.never');
}
