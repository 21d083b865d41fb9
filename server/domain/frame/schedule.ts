import type { MemberFacts } from '../contract/shapes.ts';
import type { ScheduleField } from '../contract/schedule-views.ts';
import type { Mark } from './mark.ts';
import type { LengthUnit } from './length.ts';
import { columnLetters, oneLine } from './schedule-cells.ts';
import {
  assignColumns,
  findHeadingRow,
  type ColumnMapping,
  type ScheduleColumn,
} from './schedule-headings.ts';
import { readRow, type NamedColumn, type RowProblem } from './schedule-row.ts';

export interface ReadSchedule {
  /** As a spreadsheet counts, from 1; 0 for a sheet without anything. */
  readonly headingLine: number;
  readonly columns: readonly ScheduleColumn[];
  /** Rows below the heading that are not blank. */
  readonly rows: number;
  /** In the order of the sheet; empty where no column holds the mark. */
  readonly members: readonly MemberFacts[];
  readonly problems: readonly RowProblem[];
  readonly hasMarkColumn: boolean;
  /** Every mark that the sheet names, in bad rows too, with its first line: those members are not missing from it. */
  readonly mentioned: ReadonlyMap<Mark, number>;
  /** What the sheet speaks of at all; of anything else it changes nothing. */
  readonly speaksOf: { readonly fields: ReadonlySet<ScheduleField>; readonly other: ReadonlySet<string> };
}

/**
 * Reads a member schedule from the cells of a sheet. `rows` holds every row, blank ones too, so that
 * lines count as a spreadsheet counts. Blank rows and repetitions of the heading are passed over; a row
 * with anything wrong is no member; of a mark given twice the first row stands. A bare length is in `unit`.
 * Never throws.
 */
export function readSchedule(
  rows: readonly (readonly string[])[],
  mapping: ColumnMapping = {},
  unit: LengthUnit = 'mm',
): ReadSchedule {
  const heading = findHeadingRow(rows);
  const body = rows.slice(heading + 1);
  const headers = headersOf(heading < 0 ? [] : (rows[heading] ?? []), body);
  const columns = assignColumns(headers, mapping);
  const named = nameColumns(columns);
  const hasMarkColumn = columns.some((column) => column.field === 'mark');
  const read = readBody(body, heading, headers, hasMarkColumn ? named : [], unit);
  return {
    headingLine: heading + 1,
    columns,
    ...read,
    hasMarkColumn,
    speaksOf: {
      fields: new Set(columns.flatMap((column) => column.field ?? [])),
      other: new Set(named.filter(({ field }) => isKept(field)).map(({ title }) => title)),
    },
  };
}

/** A section is read, and kept as it is written besides. */
const isKept = (field: ScheduleField | null) => field === null || field === 'section';

function readBody(
  body: readonly (readonly string[])[],
  heading: number,
  headers: readonly string[],
  columns: readonly NamedColumn[],
  unit: LengthUnit,
): Pick<ReadSchedule, 'rows' | 'members' | 'problems' | 'mentioned'> {
  const members: MemberFacts[] = [];
  const problems: RowProblem[] = [];
  const firstLineOf = new Map<Mark, number>();
  let rows = 0;
  body.forEach((cells, i) => {
    if (isBlank(cells) || isHeadingAgain(cells, headers)) return;
    rows += 1;
    if (columns.length === 0) return;
    const row = readRow(cells, heading + i + 2, columns, firstLineOf, unit);
    if (row.member) members.push(row.member);
    problems.push(...row.problems);
    if (row.mark !== null && !firstLineOf.has(row.mark)) firstLineOf.set(row.mark, row.line);
  });
  return { rows, members, problems, mentioned: firstLineOf };
}

function isBlank(cells: readonly string[]): boolean {
  return cells.every((cell) => cell.trim() === '');
}

/** Printed lists repeat the heading on each page. */
function isHeadingAgain(cells: readonly string[], headers: readonly string[]): boolean {
  return headers.every((header, i) => oneLine(cells[i] ?? '') === header);
}

/** As many columns as hold anything, in the heading or below it. */
function headersOf(heading: readonly string[], body: readonly (readonly string[])[]): string[] {
  const width = body.reduce((widest, row) => Math.max(widest, usedWidth(row)), usedWidth(heading));
  return Array.from({ length: width }, (_, i) => oneLine(heading[i] ?? ''));
}

function usedWidth(row: readonly string[]): number {
  return row.findLastIndex((cell) => cell.trim() !== '') + 1;
}

const TITLE_MAX_LENGTH = 100;

/** A name for each column, different from all others: its header, else its letter. */
function nameColumns(columns: readonly ScheduleColumn[]): NamedColumn[] {
  const used = new Set<string>(['', '__proto__']);
  return columns.map(({ index, header, field }) => {
    const letters = columnLetters(index);
    const short = [...header].slice(0, TITLE_MAX_LENGTH / 2 - 10).join('');
    const wanted = header.length <= TITLE_MAX_LENGTH ? header : short;
    const title = [wanted, letters, `${short} (${letters})`].find((name) => !used.has(name)) ?? letters;
    used.add(title);
    return { index, title, field };
  });
}
