import type { ClosingReportView } from '../contract/report-views.ts';
import type { ReportLine } from './report-line.ts';
import { isFirm } from './requirement.ts';

type Counts = ClosingReportView['counts'];

const NOTHING: Counts = {
  hidden: 0,
  onRecord: 0,
  firm: 0,
  gaps: 0,
  lost: 0,
  waived: 0,
  before: 0,
  retired: 0,
};

/** `hidden` counts what needs a record here (on record + gaps + lost + waived), what an earlier layer hid and retired members beside it. */
export function countLines(lines: readonly ReportLine[]): Counts {
  const of = (state: ReportLine['state']) => lines.filter((line) => line.state === state).length;
  const [onRecord, gaps, lost, waived] = [of('on-record'), of('gap'), of('lost'), of('waived')];
  const firm = lines.filter(
    ({ state, records: [best] }) => state === 'on-record' && best && isFirm(best),
  ).length;
  const hidden = onRecord + gaps + lost + waived;
  const beside = { before: of('hidden-before'), retired: of('retired') };
  return { hidden, onRecord, firm, gaps, lost, waived, ...beside };
}

export function sumOf(all: readonly Counts[]): Counts {
  return all.reduce(sum, NOTHING);
}

function sum(a: Counts, b: Counts): Counts {
  return {
    hidden: a.hidden + b.hidden,
    onRecord: a.onRecord + b.onRecord,
    firm: a.firm + b.firm,
    gaps: a.gaps + b.gaps,
    lost: a.lost + b.lost,
    waived: a.waived + b.waived,
    before: a.before + b.before,
    retired: a.retired + b.retired,
  };
}
