import type { Capture } from '#domain/contract/capture';
import { restsOnClockAlone } from '#domain/photo/clock-alone';
import { formatDay, formatInstant } from '../../i18n/format.ts';
import type { Language } from '../../i18n/language.ts';
import { signedSpan, withinSpan } from '../../i18n/span-words.ts';
import type { Words } from '../../i18n/words.ts';

type Dated = Extract<Capture, { state: 'dated' }>;

/** When a photo was taken, in words, with how that is known and how sure it is. */
export function captureSentence(t: Words, lang: Language, zone: string, capture: Capture): string {
  if (capture.state === 'undated') return t('photos.capture.undated');
  const when = formatInstant(capture.instant, zone, lang);
  const taken = t(`photos.capture.${capture.source}`, { when, offset: offsetText(capture.offsetMinutes) });
  return [
    taken,
    ...withinSentence(t, capture),
    ...correctionSentences(t, lang, zone, capture),
    ...byHandSentence(t, lang, zone, capture),
  ].join(lang === 'ja' ? '' : ' ');
}

function withinSentence(t: Words, capture: Dated): string[] {
  if (capture.uncertaintyS < 1) return [];
  const span = withinSpan(t, capture.uncertaintyS);
  return [t(restsOnClockAlone(capture) ? 'photos.capture.withinIfRight' : 'photos.capture.within', { span })];
}

/** What is odd about the time, a line each; what marks and people did is no oddity and stands in the sentence. */
export function againstLines(t: Words, lang: Language, firstDay: string | null, capture: Capture): string[] {
  if (capture.state === 'undated') return [];
  const first = firstDay === null ? t('common.none') : formatDay(firstDay, lang);
  return capture.flags
    .filter((flag) => flag !== 'clock-corrected' && flag !== 'dated-by-hand')
    .map((flag) => t(`photos.capture.flag.${flag}`, { first }));
}

/** For lists: the flag that says that the time is not simply the camera's, if one does. */
export function briefFlag(capture: Capture): 'clock-corrected' | 'dated-by-hand' | null {
  if (capture.state === 'undated') return null;
  return capture.byHand ? 'dated-by-hand' : capture.correction ? 'clock-corrected' : null;
}

function correctionSentences(t: Words, lang: Language, zone: string, { correction, flags }: Dated): string[] {
  if (!correction) return [];
  const { seconds, uncertaintyS, basis, marks, uncorrected } = correction;
  const values = {
    count: marks.length,
    was: formatInstant(uncorrected, zone, lang),
    span: signedSpan(t, lang, seconds),
  };
  const isConfirmed = Math.abs(seconds) <= uncertaintyS && !flags.includes('clock-set-between-marks');
  return [t(isConfirmed ? 'clock.confirmedBy' : 'clock.correctedBy', values), ...beyondMarks(t, basis)];
}

function beyondMarks(t: Words, basis: NonNullable<Dated['correction']>['basis']): string[] {
  return basis === 'before-first-mark' || basis === 'after-last-mark' ? [t(`clock.basis.${basis}`)] : [];
}

function byHandSentence(t: Words, lang: Language, zone: string, { byHand }: Dated): string[] {
  if (!byHand) return [];
  const who = byHand.by?.name ?? t('common.nobody');
  return [t('clock.byHand', { who, when: formatInstant(byHand.at, zone, lang), reason: byHand.reason })];
}

/** One line for each reading of the time that was not believed. */
export function rejectedLines(t: Words, lang: Language, zone: string, capture: Capture): string[] {
  return capture.rejected.map(({ instant, source, why }) =>
    t('photos.capture.rejectedLine', {
      when: formatInstant(instant, zone, lang),
      source: t(`photos.capture.source.${source}`),
      why: t(`photos.capture.why.${why}`),
    }),
  );
}

/** As in ISO 8601: +09:00. */
export function offsetText(minutes: number): string {
  const size = Math.abs(minutes);
  const two = (n: number) => String(n).padStart(2, '0');
  return `${minutes < 0 ? '−' : '+'}${two(Math.floor(size / 60))}:${two(size % 60)}`;
}
