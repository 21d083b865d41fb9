import type { MissingLineView } from '#domain/contract/journal-views';

/** Members that miss the same thing at one place: they are seen, and photographed, together. */
export interface MissingAt {
  readonly place: string;
  readonly rows: readonly MissingRow[];
}

export interface MissingRow {
  readonly least: MissingLineView['least'];
  readonly reason: NonNullable<MissingLineView['nearestMiss']>['reasons'][number];
  readonly lines: readonly MissingLineView[];
}

/** In the order of the report, place by place; there by what is needed and why nothing counts yet. */
export function groupMissing(lines: readonly MissingLineView[]): MissingAt[] {
  const places = groupBy(lines, ({ place }) => place);
  return places.map(({ key: place, items }) => ({
    place,
    rows: groupBy(items, (line) => `${line.least} ${reasonOf(line)}`).flatMap(
      ({ items: [first, ...rest] }) =>
        first ? [{ least: first.least, reason: reasonOf(first), lines: [first, ...rest] }] : [],
    ),
  }));
}

/** The first reason stands for the rest: a new photo at the right stage answers them all. */
function reasonOf({ nearestMiss }: MissingLineView): MissingRow['reason'] {
  return nearestMiss?.reasons[0] ?? 'no-photo';
}

function groupBy<T>(items: readonly T[], keyOf: (item: T) => string): { key: string; items: T[] }[] {
  const groups = new Map<string, T[]>();
  for (const item of items) {
    const key = keyOf(item);
    const group = groups.get(key);
    if (group) group.push(item);
    else groups.set(key, [item]);
  }
  return [...groups].map(([key, group]) => ({ key, items: group }));
}
