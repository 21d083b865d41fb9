import type { ClosingReportView, ReportOfPhotoView } from '#domain/contract/report-views';
import { countLines, sumOf } from '#domain/record/report-counts';
import { keyCache, sortLines } from '#domain/record/report-order';

/** Marks and places are the same after every tag. */
const keyOf = keyCache();

type Covering = ClosingReportView['days'][number]['coverings'][number];

/** The report with the lines that a tag on a photo changed; null where it has to be read whole. */
export function amendReport(
  report: ClosingReportView,
  { today, coverings }: ReportOfPhotoView,
): ClosingReportView | null {
  if (today !== report.today) return null;
  const changed = new Map(coverings.map(({ id, lines }) => [id, lines]));
  let fitting = 0;
  const days = report.days.map((day) => ({
    ...day,
    coverings: day.coverings.map((covering) => {
      const lines = changed.get(covering.id);
      const amended = lines ? amendCovering(covering, lines) : covering;
      if (lines && amended) fitting += 1;
      return amended ?? covering;
    }),
  }));
  if (fitting < coverings.length) return null;
  const counts = sumOf(days.flatMap((day) => day.coverings.map((covering) => covering.counts)));
  return { ...report, days, counts };
}

/** Whether it is outrun follows from what it speaks of, too, which is not here. */
const hasRelease = ({ standing: { phase } }: Covering) => phase === 'released' || phase === 'outrun';

function isMissedOtherwise(before: Covering['lines'], now: Covering['lines']): boolean {
  const isMissed = (line: Covering['lines'][number] | undefined) =>
    line?.state === 'gap' || line?.state === 'lost';
  return before.some((line, i) => isMissed(line) !== isMissed(now[i]));
}

function amendCovering(covering: Covering, changed: Covering['lines']): Covering | null {
  const now = new Map(changed.map((line) => [line.mark, line]));
  const lines = covering.lines.map((line) => now.get(line.mark) ?? line);
  const isWhole = covering.lines.filter(({ mark }) => now.has(mark)).length === now.size;
  if (!isWhole || (hasRelease(covering) && isMissedOtherwise(covering.lines, lines))) return null;
  return { ...covering, lines: sortLines(lines, keyOf), counts: countLines(lines) };
}
