import type { QueryInput } from '#domain/contract/routes';
import type { ScheduleField } from '#domain/contract/schedule-views';

/** A file as it was when it was chosen: what is previewed and what is imported are the same bytes. */
export interface ChosenTable {
  readonly key: string;
  readonly fileName: string;
  readonly contentType: string;
  readonly bytes: ArrayBuffer;
}

export interface ImportChoices {
  /** Column index → field, '' for "kept under its own name"; only what was set by hand. */
  readonly mapping: Readonly<Record<number, ScheduleField | ''>>;
  readonly missing: 'retire' | 'keep';
  readonly badRows: 'refuse' | 'skip';
}

/** A list of one wall must not retire the rest of the house, so nothing is retired unless somebody asks for it. */
export const FIRST_CHOICES: ImportChoices = { mapping: {}, missing: 'keep', badRows: 'refuse' };

const XLSX = 'application/vnd.openxmlformats-officedocument.spreadsheetml.sheet';

export function contentTypeOf(fileName: string): string {
  return /\.xlsx$/i.test(fileName) ? XLSX : 'text/csv';
}

/** A column takes a field over from the column that had it: no field can stand twice. */
export function mapColumn(
  columns: readonly { index: number; field: ScheduleField | null }[],
  mapping: ImportChoices['mapping'],
  index: number,
  field: ScheduleField | '',
): ImportChoices['mapping'] {
  const robbed = field === '' ? [] : columns.filter((c) => c.field === field && c.index !== index);
  return { ...mapping, ...Object.fromEntries(robbed.map((c) => [c.index, ''])), [index]: field };
}

export function importQuery(
  table: ChosenTable,
  { mapping, missing, badRows }: ImportChoices,
  step: { preview: '1' } | { agree: string },
): QueryInput<'importSchedule'> {
  const byHand = Object.keys(mapping).length > 0 ? { mapping: JSON.stringify(mapping) } : {};
  return { fileName: table.fileName, missing, badRows, ...byHand, ...step };
}
