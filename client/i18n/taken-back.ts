import type { Words } from './words.ts';

/** The reason of a withdrawal by undo, as the record keeps it: one for all languages. */
export const TAKEN_BACK = 'taken back';

/** A reason as the reader knows it. */
export function reasonWords(t: Words, reason: string): string {
  return reason === TAKEN_BACK ? t('common.takenBack') : reason;
}
