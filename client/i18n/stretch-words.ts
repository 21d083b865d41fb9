import type { NamedStretch } from '#domain/contract/report-views';
import type { Language } from './language.ts';
import type { Words } from './words.ts';

/** 1.82 m: to the centimetre, as lengths of a frame are told. */
export function metres(mm: number, lang: Language): string {
  const value = new Intl.NumberFormat(lang, { maximumFractionDigits: 2 }).format(mm / 1000);
  return `${value} m`;
}

/** From which line to which, and how long: "from 二 to 三, 1.82 m". */
export function stretchWords(t: Words, lang: Language, stretch: NamedStretch): string {
  const { from, to, fromMark, toMark } = stretch;
  const length = metres(to - from, lang);
  if (fromMark !== null && toMark !== null && fromMark !== toMark)
    return t('report.stretch.part', { from: fromMark, to: toMark, length });
  return t('report.stretch.unnamed', { from: metres(from, lang), to: metres(to, lang), length });
}
