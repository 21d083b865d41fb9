import type { Capture } from '#domain/contract/capture';
import { formatInstant } from '../../i18n/format.ts';
import type { Language } from '../../i18n/language.ts';
import type { Words } from '../../i18n/words.ts';

/** When a photo was taken, in words, with how that is known, how sure it is and what is odd about it. */
export function captureSentence(t: Words, lang: Language, zone: string, capture: Capture): string {
  if (capture.state === 'undated') return t('photos.capture.undated');
  const when = formatInstant(capture.instant, zone, lang);
  const taken = t(`photos.capture.${capture.source}`, { when, offset: offsetText(capture.offsetMinutes) });
  const within =
    capture.uncertaintyS >= 1 ? [t('photos.capture.within', { span: span(t, capture.uncertaintyS) })] : [];
  const odd = capture.flags.map((flag) => t(`photos.capture.flag.${flag}`));
  return [taken, ...within, ...odd].join(lang === 'ja' ? '' : ' ');
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

function span(t: Words, seconds: number): string {
  if (seconds < 120) return t('photos.capture.seconds', { count: Math.round(seconds) });
  if (seconds < 7200) return t('photos.capture.minutes', { count: Math.round(seconds / 60) });
  return t('photos.capture.hours', { count: Math.round(seconds / 3600) });
}
