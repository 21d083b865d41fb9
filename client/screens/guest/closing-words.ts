import { formatDay, formatInstant } from '../../i18n/format.ts';
import type { Language } from '../../i18n/language.ts';
import type { Words } from '../../i18n/words.ts';

/** When a covering closed or is planned to; `zone` is the house's. */
export function closingWords(
  t: Words,
  lang: Language,
  zone: string,
  { closedAt, plannedDay }: { closedAt: string | null; plannedDay: string | null },
): string {
  if (closedAt !== null) return t('guest.closedAt', { when: formatInstant(closedAt, zone, lang) });
  if (plannedDay === null) return t('guest.noDay');
  return t('guest.plannedFor', { day: formatDay(plannedDay, lang) });
}
