const LOCALES = { en: 'en-GB', ja: 'ja-JP' } as const;
const DATE = { day: 'numeric', month: 'short', year: 'numeric' } as const;
const TIME = { hour: '2-digit', minute: '2-digit', hourCycle: 'h23' } as const;

/**
 * As on the screens: 3 Apr 2026, 09:05 and 2026年4月3日 09:05. In a zone that is not known, as `toldZone` names it: UTC.
 */
export function toldTime(instant: string, zone: string, lang: 'en' | 'ja'): string {
  const write = (timeZone: string) =>
    new Date(instant).toLocaleString(LOCALES[lang], { ...DATE, ...TIME, timeZone });
  try {
    return write(zone);
  } catch {
    return write('UTC');
  }
}

/** `day`: YYYY-MM-DD; as on the screens, with its weekday. */
export function toldDay(day: string, lang: 'en' | 'ja'): string {
  const at = new Date(`${day}T00:00:00Z`);
  const text = at.toLocaleString(LOCALES[lang], { ...DATE, weekday: 'short', timeZone: 'UTC' });
  return lang === 'ja' ? text.replace('(', '（').replace(')', '）') : text;
}
