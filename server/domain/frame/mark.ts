import type { Brand } from '../brand.ts';

/** The name of a member, unique in its house, in its one normal form. */
export type Mark = Brand<string, 'Mark'>;

export const MARK_MAX_LENGTH = 60;

export type MarkProblem = 'empty' | 'too-long' | 'control-character';

/**
 * Folds what people type into one form: NFKC (full-width digits, letters and spaces become plain,
 * kana and kanji stay), outer blanks dropped, inner runs of blanks made one space.
 * Source of NFKC: Unicode Standard Annex #15.
 */
export function parseMark(text: string): { ok: true; mark: Mark } | { ok: false; problem: MarkProblem } {
  const folded = text.normalize('NFKC').replace(/\s+/gu, ' ').trim();
  if (folded === '') return { ok: false, problem: 'empty' };
  if (/[\p{Cc}\p{Cf}\p{Cs}\p{Co}]/u.test(folded)) return { ok: false, problem: 'control-character' };
  if ([...folded].length > MARK_MAX_LENGTH) return { ok: false, problem: 'too-long' };
  return { ok: true, mark: folded as Mark };
}
