/**
 * A cell of a workbook as a person sees it: numbers with the 15 digits that Excel keeps (3, not 3.0;
 * 0.3, not 0.30000000000000004), days and times as ISO 8601, truth values in capitals.
 */
export function cellText(value: unknown): string {
  if (value === null || value === undefined) return '';
  if (typeof value === 'number') return String(Number(value.toPrecision(15)));
  if (typeof value === 'boolean') return value ? 'TRUE' : 'FALSE';
  if (value instanceof Date) return dateText(value);
  return typeof value === 'string' ? value.replace(/\r\n?/gu, '\n') : '';
}

const DAY_S = 86_400;
/** Excel's day 0, 1899-12-30, in seconds from 1970: a time of day without a date falls on it. */
const EXCEL_DAY_0_S = -25_569 * DAY_S;

/** Serial dates carry no zone and come out as if UTC; their fraction of a day is rounded to the second. */
function dateText(date: Date): string {
  const seconds = Math.round(date.getTime() / 1000);
  if (!Number.isFinite(seconds)) return '';
  const [day = '', time = ''] = new Date(seconds * 1000).toISOString().slice(0, 19).split('T');
  if (seconds >= EXCEL_DAY_0_S && seconds < EXCEL_DAY_0_S + DAY_S) return time;
  return seconds % DAY_S === 0 ? day : `${day} ${time}`;
}
