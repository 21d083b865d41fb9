import type { ClosingReportView } from '#domain/contract/views';

export type NextClosing = ClosingReportView['days'][number]['coverings'][number];

/** What has not closed yet, the most urgent first; those without a day come last. */
export function nextClosings(report: ClosingReportView): NextClosing[] {
  const open = report.days.flatMap(({ coverings }) => coverings).filter(({ closedAt }) => closedAt === null);
  return open.sort((a, b) => (a.daysLeft ?? Infinity) - (b.daysLeft ?? Infinity) || 0);
}
