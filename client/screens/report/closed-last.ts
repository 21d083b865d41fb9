import type { ClosingReportView } from '#domain/contract/report-views';

type Days = ClosingReportView['days'];

export interface ReportParts {
  /** By closing day: here something can still be photographed, if only from the other face. */
  readonly open: Days;
  /** In the order in which they closed: nothing can be done about what is missing there. */
  readonly closed: Days[number]['coverings'];
}

/** The report in the order in which it is of use on site. */
export function closedLast(days: Days): ReportParts {
  const isOpen = ({ closedAt, counts }: Days[number]['coverings'][number]) =>
    closedAt === null || counts.gaps > 0;
  return {
    open: days
      .map(({ day, coverings }) => ({ day, coverings: coverings.filter(isOpen) }))
      .filter(({ coverings }) => coverings.length > 0),
    closed: days.flatMap(({ coverings }) => coverings.filter((covering) => !isOpen(covering))),
  };
}
