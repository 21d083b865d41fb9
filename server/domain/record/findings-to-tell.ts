import type { ReportLine } from './report-line.ts';

type Evidence = ReportLine['records'][number];

/** What is to be looked at about the best of a line's records, with the doubts that others of them had. */
export function findingsToTell([best, ...others]: readonly Evidence[]): Evidence['findings'] {
  const doubts = others.flatMap(({ findings }) => findings.filter(({ doubt }) => doubt));
  return [...(best?.findings ?? []), ...doubts];
}
