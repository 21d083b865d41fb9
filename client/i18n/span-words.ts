import type { Language } from './language.ts';
import type { Words } from './words.ts';

const UNITS = [
  ['days', 86_400],
  ['hours', 3600],
  ['minutes', 60],
  ['seconds', 1],
] as const;

/** A signed time in its two largest units or more, as −37 min 12 s; to the second. */
export function signedSpan(t: Words, lang: Language, seconds: number): string {
  const sign = Math.round(Math.abs(seconds)) === 0 ? '±' : seconds < 0 ? '−' : '+';
  return `${sign}${plainSpan(t, lang, seconds)}`;
}

/** The same without its sign, where a word says which way. */
export function plainSpan(t: Words, lang: Language, seconds: number): string {
  let rest = Math.round(Math.abs(seconds));
  const parts: string[] = [];
  for (const [unit, size] of UNITS) {
    const n = Math.floor(rest / size);
    rest -= n * size;
    if (n > 0) parts.push(t(`clock.span.${unit}`, { n }));
  }
  return parts.join(lang === 'ja' ? '' : ' ') || t('clock.span.seconds', { n: 0 });
}

/** By how much a time may be wrong: ± 60 s, ± 15 min, ± 12 h. */
export function withinSpan(t: Words, seconds: number): string {
  if (seconds < 120) return t('photos.capture.seconds', { count: Math.round(seconds) });
  if (seconds < 7200) return t('photos.capture.minutes', { count: Math.round(seconds / 60) });
  return t('photos.capture.hours', { count: Math.round(seconds / 3600) });
}
