import type { MemberHistoryView } from '#domain/contract/views';
import type { Words } from '../../i18n/words.ts';

export type StageInterval = MemberHistoryView['stages'][number];

/** No photo shows the stage: a later one shows the member past it. */
export function isInferred({ stage, by }: Pick<StageInterval, 'stage' | 'by'>): boolean {
  return by !== null && by.stage !== stage;
}

/** An interval in words: a stage is never known as a date, only as after one photo and by another. */
export function stageIntervalWords(
  t: Words,
  interval: Pick<StageInterval, 'stage' | 'after' | 'by'>,
  when: (instant: string) => string,
): string {
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
