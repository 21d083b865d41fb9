import type { MemberFacts } from '../contract/shapes.ts';
import type { SchedulePreviewView, ScheduleField } from '../contract/schedule-views.ts';
import { parseMark, type Mark, type MarkProblem } from './mark.ts';
import { parseLength, type LengthUnit } from './length.ts';
import { oneLine, parseSection, parseTrack, severalLines } from './schedule-cells.ts';
import type { SetOut } from './set-out.ts';
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
const MAX_LENGTH = {
  ...{ kind: 100, name: 200, place: 200, note: 2000, other: 1000 },
  ...{ from: 60, to: 60, level: 20 },
} as const;
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
  readonly setOut: Record<'from' | 'to' | 'level', string> &
    Record<'base' | 'top' | 'width' | 'depth', number | null>;
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
  unit: LengthUnit = 'mm',
): ReadRow {
  const draft: Draft = {
    mark: null,
    track: null,
    texts: { kind: '', name: '', place: '', note: '' },
    setOut: { ...NOWHERE },
    other: [],
  };
  const problems = columns.flatMap((column): RowProblem[] => {
    const cell = cells[column.index] ?? '';
    const complaint = readCell(cell, column, draft, { firstLineOf, unit });
    return complaint ? [{ line, column: column.title, value: cell.slice(0, SHOWN_VALUE), ...complaint }] : [];
  });
  return { line, mark: draft.mark, member: problems.length === 0 ? memberOf(draft) : null, problems };
}

/** Nothing stated of where a member lies. */
export const NOWHERE: SetOut = {
  ...{ from: '', to: '', level: '' },
  ...{ base: null, top: null, width: null, depth: null },
};

/** null where nothing is stated, so that a table without these columns says nothing. */
export function statedSetOut(setOut: SetOut): SetOut | null {
  return Object.values(setOut).every((value) => value === '' || value === null) ? null : { ...setOut };
}

function memberOf({ mark, track, texts, setOut, other }: Draft): MemberFacts | null {
  if (mark === null) return null;
  return { mark, ...texts, track, other: Object.fromEntries(other), setOut: statedSetOut(setOut) };
}

function readCell(
  cell: string,
  { field, title }: NamedColumn,
  draft: Draft,
  { firstLineOf, unit }: { firstLineOf: ReadonlyMap<Mark, number>; unit: LengthUnit },
): Complaint | null {
  if (field === 'mark') return readMark(cell, draft, firstLineOf);
  if (field === 'track') return readTrack(cell, draft);
  if (field === 'base' || field === 'top' || field === 'width' || field === 'depth')
    return readLength(cell, field, draft, unit);
  if (field === 'section') readSection(cell, draft, unit);
  const text = field === 'note' ? severalLines(cell) : oneLine(cell);
  const words = field === 'section' ? null : field;
  if (text.length > MAX_LENGTH[words ?? 'other']) return complaint('value-too-long');
  if (words === 'from' || words === 'to' || words === 'level') draft.setOut[words] = text;
  else if (words) draft.texts[words] = text;
  else if (text !== '') draft.other.push([title, text]);
  return null;
}

function readLength(
  cell: string,
  field: 'base' | 'top' | 'width' | 'depth',
  draft: Draft,
  unit: LengthUnit,
): Complaint | null {
  if (cell.trim() === '') return null;
  const length = parseLength(cell, unit);
  if (length === null) return complaint('not-a-length');
  draft.setOut[field] = length;
  return null;
}

/** Also kept as it is written, since much else may stand there. A column for width or depth has the last word. */
function readSection(cell: string, draft: Draft, unit: LengthUnit): void {
  const section = parseSection(cell, unit);
  if (section === null) return;
  draft.setOut.width ??= section[0];
  draft.setOut.depth ??= section[1];
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
