import type { CameraView } from '#domain/contract/clock';
import { readClock, type Shown } from '#domain/photo/clock-reading';
import type { Language } from '../../i18n/language.ts';
import { plainSpan, signedSpan } from '../../i18n/span-words.ts';
import type { Words } from '../../i18n/words.ts';

const DAY_S = 86_400;

/** Seconds that a clock mark adds to what the clock in the camera showed; null where either is no time. */
export function clockShift(shown: Shown, trueTime: string | null, zone: string): number | null {
  const clock = readClock(shown, zone);
  if (clock === null || trueTime === null) return null;
  return (Date.parse(trueTime) - clock.ms) / 1000;
}

/** So much that a mistyped day, month or year is likelier than a clock that was so wrong. */
export function isFarOff(seconds: number | null): boolean {
  return seconds !== null && Math.abs(seconds) >= DAY_S;
}

/** What the mark says of the clock, and what it will do to the photos of its camera, where that is known. */
export function shiftSentences(
  t: Words,
  lang: Language,
  seconds: number,
  camera: Pick<CameraView, 'photos' | 'marks'> | undefined,
): string[] {
  const way = Math.round(Math.abs(seconds)) === 0 ? 'right' : seconds > 0 ? 'slow' : 'fast';
  return [
    t(`clock.mark.was.${way}`, { span: plainSpan(t, lang, seconds) }),
    followSentence(t, signedSpan(t, lang, seconds), way === 'right', camera),
  ];
}

function followSentence(
  t: Words,
  span: string,
  isRight: boolean,
  camera: Pick<CameraView, 'photos' | 'marks'> | undefined,
): string {
  if (!camera) return t(isRight ? 'clock.mark.staysAll' : 'clock.mark.movesAll', { span });
  const count = camera.photos;
  // Beside other marks, photos nearer to those move by another span.
  if (camera.marks.length > 0) return t('clock.mark.movesWithOthers', { count, span });
  return t(isRight ? 'clock.mark.stays' : 'clock.mark.moves', { count, span });
}
