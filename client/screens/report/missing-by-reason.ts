import type { ClosingReportView } from '#domain/contract/report-views';

type Line = ClosingReportView['days'][number]['coverings'][number]['lines'][number];

export interface MissingFor {
  readonly reason: NonNullable<Line['nearestMiss']>['reasons'][number];
  readonly marks: readonly string[];
}

/** What is missing by reason, the most frequent first. */
export function missingByReason(lines: readonly Line[]): MissingFor[] {
  const marks = new Map<MissingFor['reason'], string[]>();
  for (const { nearestMiss, mark } of lines) {
    const [reason] = nearestMiss?.reasons ?? [];
    if (reason !== undefined) marks.set(reason, [...(marks.get(reason) ?? []), mark]);
  }
  return [...marks]
    .map(([reason, all]) => ({ reason, marks: all }))
    .sort((a, b) => b.marks.length - a.marks.length);
}
