import type { MemberFacts } from '../contract/shapes.ts';
import type { SchedulePreviewView, ScheduleField } from '../contract/schedule-views.ts';
import { parseMark, type Mark, type MarkProblem } from './mark.ts';
import { oneLine, parseTrack, severalLines } from './schedule-cells.ts';
import type { Track } from './stage.ts';

export type RowProblem = SchedulePreviewView['problems'][number];

/** A column as its cells are read: `title` names it to people and in `other`. */
export interface NamedColumn {
  readonly index: number;
  readonly title: string;
  readonly field: ScheduleField | null;
}

export interface ReadRow {
  readonly line: number;
  readonly mark: Mark | null;
  /** null where anything is wrong with the row. */
  readonly member: MemberFacts | null;
  readonly problems: readonly RowProblem[];
}

/** Lengths in UTF-16 units as MemberFacts limits them. */
const MAX_LENGTH = { kind: 100, name: 200, place: 200, note: 2000, other: 1000 } as const;
const SHOWN_VALUE = 200;

const MARK_PROBLEMS = {
  empty: 'mark-missing',
  'too-long': 'mark-too-long',
  'control-character': 'mark-control-character',
} as const satisfies Record<MarkProblem, RowProblem['reason']>;

interface Draft {
  mark: Mark | null;
  track: Track | null;
  readonly texts: Record<'kind' | 'name' | 'place' | 'note', string>;
  readonly other: [column: string, value: string][];
}

interface Complaint {
  readonly reason: RowProblem['reason'];
  readonly firstLine: number | null;
}

/** Reads one row below the heading; all that is wrong with it is said, not only the first thing. */
export function readRow(
  cells: readonly string[],
  line: number,
  columns: readonly NamedColumn[],
  firstLineOf: ReadonlyMap<Mark, number>,
): ReadRow {
  const draft: Draft = {
    mark: null,
    track: null,
    texts: { kind: '', name: '', place: '', note: '' },
    other: [],
  };
  const problems = columns.flatMap((column): RowProblem[] => {
    const cell = cells[column.index] ?? '';
    const complaint = readCell(cell, column, draft, firstLineOf);
    return complaint ? [{ line, column: column.title, value: cell.slice(0, SHOWN_VALUE), ...complaint }] : [];
  });
  return { line, mark: draft.mark, member: problems.length === 0 ? memberOf(draft) : null, problems };
}

function memberOf({ mark, track, texts, other }: Draft): MemberFacts | null {
  return mark === null ? null : { mark, ...texts, track, other: Object.fromEntries(other) };
}

function readCell(
  cell: string,
  column: NamedColumn,
  draft: Draft,
  firstLineOf: ReadonlyMap<Mark, number>,
): Complaint | null {
  if (column.field === 'mark') return readMark(cell, draft, firstLineOf);
  if (column.field === 'track') return readTrack(cell, draft);
  const text = column.field === 'note' ? severalLines(cell) : oneLine(cell);
  if (text.length > MAX_LENGTH[column.field ?? 'other']) return complaint('value-too-long');
  if (column.field) draft.texts[column.field] = text;
  else if (text !== '') draft.other.push([column.title, text]);
  return null;
}

function readMark(cell: string, draft: Draft, firstLineOf: ReadonlyMap<Mark, number>): Complaint | null {
  const parsed = parseMark(cell);
  if (!parsed.ok) return complaint(MARK_PROBLEMS[parsed.problem]);
  draft.mark = parsed.mark;
  const firstLine = firstLineOf.get(parsed.mark);
  return firstLine === undefined ? null : complaint('mark-repeated', firstLine);
}

function readTrack(cell: string, draft: Draft): Complaint | null {
  const track = parseTrack(cell);
  if (track === undefined) return complaint('unknown-track');
  draft.track = track;
  return null;
}

function complaint(reason: RowProblem['reason'], firstLine: number | null = null): Complaint {
  return { reason, firstLine };
}
