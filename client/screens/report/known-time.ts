import type { DatedBy } from '#domain/contract/clock';
import { formatInstant } from '../../i18n/format.ts';
import type { Language } from '../../i18n/language.ts';
import { withinSpan } from '../../i18n/span-words.ts';
import type { Words } from '../../i18n/words.ts';

export interface KnownTime {
  instant: string | null;
  datedBy: DatedBy | null;
  uncertaintyS: number;
}

/** The time of a record, with a word on it where it is not simply the camera's. */
export function knownTime(
  t: Words,
  lang: Language,
  zone: string,
  { instant, datedBy, uncertaintyS }: KnownTime,
): string {
  if (instant === null) return t('report.noTime');
  return t(`report.known.${datedBy ?? 'file'}`, {
    when: formatInstant(instant, zone, lang),
    within: withinSpan(t, uncertaintyS),
  });
}
