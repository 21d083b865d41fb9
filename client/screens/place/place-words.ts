import type { Place, PlaceHeading } from '#domain/contract/place';
import type { Site } from '#domain/contract/shapes';
import { compassPoint } from '#domain/place/compass-point';
import { measureLine, type LatLon } from '#domain/place/geodesic';
import { joinWords } from '../../i18n/join-words.ts';
import type { Language } from '../../i18n/language.ts';
import type { Words } from '../../i18n/words.ts';
import { lengthWords, pairWords } from './length-words.ts';

/** "62 m north-east of the site's middle, ± 10 m" */
export function fromMiddle(
  t: Words,
  lang: Language,
  { distanceM, azimuth }: { distanceM: number; azimuth: number },
  errorM: number,
): string {
  const error = lengthWords(t, lang, errorM);
  if (distanceM < 1) return t('place.atMiddle', { error });
  const distance = lengthWords(t, lang, distanceM);
  return t('place.fromMiddle', { distance, point: t(`place.point.${compassPoint(azimuth)}`), error });
}

/** What the plan shows of a photo, in words; null where there is nothing to be shown. */
export function planWords(t: Words, lang: Language, place: Place, site: Site | null): string | null {
  const { position, heading, device } = place;
  const parts: string[] = [];
  if (position) parts.push(whereWords(t, lang, position, position.errorM, site));
  if (position && heading && isTrue(heading))
    parts.push(t('place.looking', { point: t(`place.point.${compassPoint(heading.trueDegrees)}`) }));
  if (device) {
    const words = whereWords(t, lang, device, device.errorM, site);
    parts.push(t('place.device.inPlan', { words }));
  }
  return parts.length === 0 ? null : joinWords(parts, lang);
}

function whereWords(t: Words, lang: Language, at: LatLon, errorM: number, site: Site | null): string {
  return site ? fromMiddle(t, lang, measureLine(site, at), errorM) : t('place.latLon', pairWords(at));
}

/** Whether its degrees are from true north, or may be. */
export function isTrue({ flags }: PlaceHeading): boolean {
  return !flags.some((flag) => flag === 'no-place-to-turn-at' || flag === 'no-magnetic-model');
}
