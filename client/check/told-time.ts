import { toldZone } from '#domain/record/sheet/told-zone';
import { formatInstant } from '../i18n/format.ts';
import type { Language } from '../i18n/language.ts';
import type { Words } from '../i18n/words.ts';

/** In the zone of the house, as the sheet has it, and in UTC; once where they are the same all year. */
export function toldTime(t: Words, lang: Language, at: string, zone: string): string {
  const { name, offset } = toldZone(zone, lang, at);
  const [local, utc] = [formatInstant(at, zone, lang), formatInstant(at, 'UTC', lang)];
  if (local === utc && offset === '+00:00') return t('check.timesUtc', { utc });
  return t('check.times', { local, zone: name, offset, utc });
}
