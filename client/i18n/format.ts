import type { Language } from './language.ts';

export const LOCALES = { en: 'en-GB', ja: 'ja-JP' } as const;

/** A zone that this browser does not know is shown as UTC, and says so, rather than not at all. */
function written(at: Date, lang: Language, zone: string, options: Intl.DateTimeFormatOptions): string {
  const isKnown = knowsZone(zone);
  const text = formatOf(lang, isKnown ? zone : 'UTC', options).format(at);
  return isKnown ? text : `${text} UTC`;
}

/** Kept: to make one takes longer than to write a hundred times with it, and lists are long. */
const formats = new Map<string, Intl.DateTimeFormat>();

function formatOf(
  lang: Language,
  timeZone: string,
  options: Intl.DateTimeFormatOptions,
): Intl.DateTimeFormat {
  const key = [lang, timeZone, JSON.stringify(options)].join(' ');
  const format = formats.get(key) ?? new Intl.DateTimeFormat(LOCALES[lang], { ...options, timeZone });
  formats.set(key, format);
  return format;
}

const zones = new Map<string, boolean>();

function knowsZone(zone: string): boolean {
  const isKnown = zones.get(zone) ?? canFormat(zone);
  zones.set(zone, isKnown);
  return isKnown;
}

function canFormat(zone: string): boolean {
  try {
    new Intl.DateTimeFormat('en', { timeZone: zone });
    return true;
  } catch {
    return false;
  }
}

/** One way of writing a date and one of writing a time, on all screens: 3 Apr 2026, 09:05 and 2026年4月3日 09:05. */
const DATE = { day: 'numeric', month: 'short', year: 'numeric' } as const;
const TIME = { hour: '2-digit', minute: '2-digit', hourCycle: 'h23' } as const;

/** `iso`: UTC instant; shown as date and time in `zone` (IANA). */
export function formatInstant(iso: string, zone: string, lang: Language): string {
  return written(new Date(iso), lang, zone, { ...DATE, ...TIME });
}

/** The time of day alone, for lists within one day. */
export function formatTime(iso: string, zone: string, lang: Language): string {
  return written(new Date(iso), lang, zone, TIME);
}

/** `day`: YYYY-MM-DD, already in the house's zone; shown with its weekday. */
export function formatDay(day: string, lang: Language): string {
  const text = written(new Date(`${day}T00:00:00Z`), lang, 'UTC', { ...DATE, weekday: 'short' });
  // The brackets of running Japanese text are full-width.
  return lang === 'ja' ? text.replace('(', '（').replace(')', '）') : text;
}

export function formatNumber(value: number, lang: Language): string {
  return new Intl.NumberFormat(LOCALES[lang]).format(value);
}

/** Decimal units, as file managers and storage makers count: 480 B, 12 kB, 3.4 MB. */
export function formatBytes(bytes: number, lang: Language): string {
  const [unit, size] = bytes < 1000 ? ['B', 1] : bytes < 999_500 ? ['kB', 1000] : ['MB', 1_000_000];
  const digits = unit === 'MB' ? 1 : 0;
  const value = new Intl.NumberFormat(LOCALES[lang], { maximumFractionDigits: digits }).format(bytes / size);
  return `${value} ${unit}`;
}

export function formatList(items: readonly string[], lang: Language): string {
  return new Intl.ListFormat(LOCALES[lang], { type: 'conjunction' }).format(items);
}

/** The calendar day of an instant in a zone, as YYYY-MM-DD. */
export function dayIn(zone: string, at: Date): string {
  const timeZone = knowsZone(zone) ? zone : 'UTC';
  const numeric = { year: 'numeric', month: '2-digit', day: '2-digit', calendar: 'gregory' } as const;
  const parts = new Intl.DateTimeFormat('en-GB', { ...numeric, timeZone }).formatToParts(at);
  const part = (type: string) => parts.find((p) => p.type === type)?.value ?? '';
  return `${part('year')}-${part('month')}-${part('day')}`;
}
