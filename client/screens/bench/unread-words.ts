import type { Rival } from '#domain/contract/shapes';
import type { Words } from '../../i18n/words.ts';

/** The place of each field among the names of what is read. */
const NAMES = {
  wallTime: 'time-original',
  offsetMinutes: 'offset',
  gpsTime: 'gps-time',
  position: 'position',
  positionError: 'position-error',
  heading: 'heading',
  make: 'make',
  model: 'model',
  serial: 'serial',
  focalLength35Mm: 'focal-length-35',
} as const satisfies Record<Rival['field'], string>;

export const RIVAL_FIELDS = Object.keys(NAMES) as Rival['field'][];

/** A sentence for a complaint. Codes of another version get a general one, so that none goes unsaid. */
export function complaintSentence(t: Words, code: string): string {
  const [codes, names, reasons] = [
    t('unread.code', { returnObjects: true }),
    t('unread.what', { returnObjects: true }),
    t('unread.why', { returnObjects: true }),
  ];
  if (isKey(codes, code)) return codes[code];
  for (const why of Object.keys(reasons)) {
    const what = code.endsWith(`-${why}`) ? code.slice(0, -why.length - 1) : '';
    if (isKey(reasons, why) && isKey(names, what)) return t(`unread.why.${why}`, { what: names[what] });
  }
  return t('unread.other', { code });
}

export function rivalSentence(t: Words, { field, first, second }: Rival): string {
  const value = (text: string) => rivalValue(field, text);
  return t('unread.rival', {
    what: t(`unread.what.${NAMES[field]}`),
    first: value(first),
    second: value(second),
  });
}

/** As people write it; the ledger holds bare values. */
function rivalValue(field: Rival['field'], text: string): string {
  if (field === 'wallTime' || field === 'gpsTime') return inOnePiece(text);
  if (field === 'offsetMinutes') return clockDifference(Number(text));
  if (field === 'heading') return `${text}°`;
  if (field === 'positionError') return `± ${text} m`;
  return field === 'focalLength35Mm' ? `${text} mm` : text;
}

/** A date is not broken at its hyphens at the end of a line. */
function inOnePiece(time: string): string {
  const text = time
    .replace(/\.0+(?=Z?$)/, '')
    .replace('T', '\u00a0')
    .replace(/Z$/, '\u00a0UTC');
  return text.replaceAll('-', '\u2011');
}

function clockDifference(minutes: number): string {
  const [hours, rest] = [Math.trunc(Math.abs(minutes) / 60), Math.abs(minutes) % 60];
  return `${minutes < 0 ? '−' : '+'}${String(hours).padStart(2, '0')}:${String(rest).padStart(2, '0')}`;
}

function isKey<T extends object>(words: T, key: string): key is Extract<keyof T, string> {
  return Object.hasOwn(words, key);
}
