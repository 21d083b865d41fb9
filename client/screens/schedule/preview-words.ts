import type { MemberFacts } from '#domain/contract/shapes';
import type { ScheduleField, SchedulePreviewView } from '#domain/contract/schedule-views';

export interface Difference {
  /** A field of the schedule, or the name of a column of the table's own. */
  readonly field: ScheduleField | { readonly own: string };
  readonly before: string;
  readonly after: string;
}

const COMPARED = ['kind', 'name', 'place', 'track', 'note'] as const;

const PLACED = ['from', 'to', 'level', 'base', 'top', 'width', 'depth'] as const;

/** In what a member differs before and after, field by field. */
export function differences(before: MemberFacts, after: MemberFacts): Difference[] {
  const fields = COMPARED.map((field) => ({
    field,
    before: before[field] ?? '',
    after: after[field] ?? '',
  }));
  const own = [...new Set([...Object.keys(before.other), ...Object.keys(after.other)])].map((name) => ({
    field: { own: name },
    before: before.other[name] ?? '',
    after: after.other[name] ?? '',
  }));
  const places = PLACED.map((field) => ({
    field,
    before: String(before.setOut?.[field] ?? ''),
    after: String(after.setOut?.[field] ?? ''),
  }));
  return [...fields, ...places, ...own].filter((d) => d.before !== d.after);
}

/** A few values of one column: those below its heading that are not empty. */
export function firstValues({ columns, sample }: SchedulePreviewView, index: number, count = 3): string[] {
  const heading = sample.findIndex((row) =>
    columns.every((c) => (row[c.index] ?? '').trim() === c.header.trim()),
  );
  return sample
    .slice(heading + 1)
    .map((row) => (row[index] ?? '').trim())
    .filter((value) => value !== '')
    .slice(0, count);
}

export function hasMarkColumn({ columns }: Pick<SchedulePreviewView, 'columns'>): boolean {
  return columns.some(({ field }) => field === 'mark');
}

type Preview = Pick<
  SchedulePreviewView,
  'columns' | 'rows' | 'problems' | 'added' | 'changed' | 'retired' | 'unchanged'
>;

/** Why there is nothing to import; null where there is something. */
export type NothingBecause = 'noRows' | 'noMark' | 'allBad' | 'restKnown' | 'allKnown';

export function whyNothing(preview: Preview): NothingBecause | null {
  if (preview.rows === 0) return 'noRows';
  if (!hasMarkColumn(preview)) return 'noMark';
  if (!changesNothing(preview)) return null;
  if (preview.problems.length === 0) return 'allKnown';
  return preview.unchanged === 0 ? 'allBad' : 'restKnown';
}

/** How many rows have anything wrong; one row can have several things wrong. */
export function countBadRows({ problems }: Pick<Preview, 'problems'>): number {
  return new Set(problems.map(({ line }) => line)).size;
}

function changesNothing({ added, changed, retired }: Preview): boolean {
  return added.length + changed.length + retired.length === 0;
}
