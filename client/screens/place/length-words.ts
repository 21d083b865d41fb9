import type { LatLon } from '#domain/place/geodesic';
import { formatNumber } from '../../i18n/format.ts';
import type { Language } from '../../i18n/language.ts';
import type { Words } from '../../i18n/words.ts';

/** Whole metres, from a kilometre on tenths of one: nothing here is known better. */
export function lengthWords(t: Words, lang: Language, metres: number): string {
  if (metres >= 999.5) return t('place.kilometres', { n: formatNumber(tenths(metres / 1000), lang) });
  return t('place.metres', { n: formatNumber(metres < 10 ? tenths(metres) : Math.round(metres), lang) });
}

/** Five decimals of a degree are a metre. */
export function pairWords({ lat, lon }: LatLon): { lat: string; lon: string } {
  return { lat: lat.toFixed(5), lon: lon.toFixed(5) };
}

const tenths = (value: number) => Math.round(value * 10) / 10;
