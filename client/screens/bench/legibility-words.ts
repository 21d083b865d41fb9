import type { LegibilityView } from '#domain/contract/legibility-views';
import type { Words } from '../../i18n/words.ts';

export type SeenLegibility = Pick<LegibilityView, 'verdict' | 'reasons' | 'acrossPx'>;

/** What is to be said of a drawing: the worst first, and what to do about it. Empty while nothing is known. */
export function legibilityWords(t: Words, { verdict, reasons, acrossPx }: SeenLegibility): string {
  const [worst] = reasons;
  if (worst === 'not-measured') return t('legibility.line.not-measured');
  if (verdict === null) return '';
  if (verdict === 'clear' || worst === undefined) return t('legibility.line.clear');
  // Half a pixel is none that could be seen.
  const line = t(`legibility.line.${verdict}.${worst}`, { px: Math.floor(acrossPx ?? 0) });
  return verdict === 'unreadable' ? `${line} ${t('legibility.noRecord')}` : line;
}
