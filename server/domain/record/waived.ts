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

/**
 * A gap that a release accepts is none, unless more is missing by now, or asked for, than was accepted. Of a release
 * that was taken back since the gap keeps who had accepted it; one that came after the closing accepts nothing.
 */
export function withWaiver(
  line: ReportLine,
  waived: WaivedMember | undefined,
  closedAt: string | null,
): ReportLine {
  const isMissing = line.state === 'gap' || line.state === 'lost';
  if (!waived || !isMissing || !isWithin(line, waived) || !isInTime(waived.waiver, closedAt)) return line;
  const { waiver } = waived;
  return waiver.takenBack ? { ...line, waiver } : { ...line, state: 'waived', waiver, liesUnder: null };
}

interface Released {
  readonly hold: { readonly release: string | null };
  readonly closed: { readonly release: string | null } | null;
}

/** The release that may accept gaps of a covering: the one that it closed under, else the one that stands. */
export function acceptingRelease({ hold, closed }: Released): string[] {
  const release = closed?.release ?? hold.release;
  return release === null ? [] : [release];
}

/** Whether what a release accepts was said before the covering closed; UTC instants of equal length. */
export function isInTime({ at }: Pick<WaiverView, 'at'>, closedAt: string | null): boolean {
  return closedAt === null || at <= closedAt;
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
