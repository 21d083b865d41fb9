import type { ReleasedMember } from '../contract/hold.ts';
import type { WaiverView } from '../contract/report-views.ts';
import { stageRank } from '../frame/stage.ts';
import type { ReportLine } from './report-line.ts';
import { without, type Stretch } from './stretches.ts';

/** A member that a release accepts without a record, as it stood then. */
export interface WaivedMember extends Pick<
  ReleasedMember,
  'mark' | 'least' | 'views' | 'stretch' | 'missing'
> {
  readonly waiver: WaiverView;
}

/** A gap that a release accepts is none, unless more is missing by now, or asked for, than was accepted. */
export function withWaiver(line: ReportLine, waived: WaivedMember | undefined): ReportLine {
  const isMissing = line.state === 'gap' || line.state === 'lost';
  if (!waived || !isMissing || !isWithin(line, waived)) return line;
  return { ...line, state: 'waived', waiver: waived.waiver, liesUnder: null };
}

function isWithin(line: ReportLine, waived: WaivedMember): boolean {
  if (stageRank(line.least) > stageRank(waived.least) || line.views > waived.views) return false;
  const accepted = partsWithout(waived.missing, waived.stretch);
  if (accepted === null) return true;
  const missing = partsWithout(line.missing, line.hidden);
  return missing !== null && without(missing, accepted).length === 0;
}

/** The parts that have no record; null: the whole member, whatever its length. */
function partsWithout(missing: readonly Stretch[], hidden: Stretch | null): readonly Stretch[] | null {
  return missing.length > 0 ? missing : hidden && [hidden];
}
