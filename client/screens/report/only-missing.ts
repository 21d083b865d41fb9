import type { ClosingReportView } from '#domain/contract/report-views';

/** The report without what is on record: lines that miss a record, and the coverings and days that have such. */
export function onlyMissing(days: ClosingReportView['days']): ClosingReportView['days'] {
  return days
    .map(({ day, coverings }) => ({
      day,
      coverings: coverings
        .map((covering) => ({ ...covering, lines: covering.lines.filter(isMissing) }))
        .filter(({ lines }) => lines.length > 0),
    }))
    .filter(({ coverings }) => coverings.length > 0);
}

const isMissing = ({ state }: { state: string }) => state === 'gap' || state === 'lost';
