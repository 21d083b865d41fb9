import type { MemberHistoryView } from '#domain/contract/views';
import type { Words } from '../../i18n/words.ts';

export type StageInterval = MemberHistoryView['stages'][number];

/** An interval in words: a stage is never known as a date, only as after one photo and by another. */
export function stageIntervalWords(
  t: Words,
  { after, by }: Pick<StageInterval, 'after' | 'by'>,
  when: (instant: string) => string,
): string {
  if (after && by) return t('members.history.both', { after: when(after.instant), by: when(by.instant) });
  if (by) return t('members.history.onlyBy', { by: when(by.instant) });
  if (after) return t('members.history.onlyAfter', { after: when(after.instant) });
  return t('members.history.never');
}
