import { formatList } from '../../i18n/format.ts';
import type { Language } from '../../i18n/language.ts';
import type { Words } from '../../i18n/words.ts';
import type { Line } from './line-row.tsx';

/** Marks that are named of each reason before the rest is counted. */
const NAMED = 3;

/** What is missing in few words: by reason, the most frequent first, with the first marks of each. */
export function missingWords(t: Words, lang: Language, lines: readonly Line[]): string {
  const marks = new Map<NonNullable<Line['nearestMiss']>['reasons'][number], string[]>();
  for (const { nearestMiss, mark } of lines) {
    const [reason] = nearestMiss?.reasons ?? [];
    if (reason !== undefined) marks.set(reason, [...(marks.get(reason) ?? []), mark]);
  }
  const byCount = [...marks].sort(([, a], [, b]) => b.length - a.length);
  return byCount
    .map(([reason, all]) => {
      const more = all.length - NAMED;
      const rest = more > 0 ? [t('coverings.andMore', { count: more })] : [];
      const named = formatList([...all.slice(0, NAMED), ...rest], lang);
      return t('coverings.missing', { reason: t(`report.short.${reason}`), marks: named });
    })
    .join(lang === 'ja' ? '。' : '; ');
}
