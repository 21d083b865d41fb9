import type { ClosingReportView, MissReason } from '../contract/report-views.ts';
import type { Mark } from '../frame/mark.ts';
import { compareText } from '../frame/mark-order.ts';
import { stageRank } from '../frame/stage.ts';
import { isFirm, reasonsAgainst, type Requirement, type StandingTag } from './requirement.ts';

export type ReportLine = ClosingReportView['days'][number]['coverings'][number]['lines'][number];
type Evidence = ReportLine['records'][number];

interface Judged {
  readonly tag: StandingTag;
  readonly reasons: MissReason[];
}

/**
 * One hidden member: its records, firm ones first and of those the best, or the nearest miss. The nearest
 * miss is the tag with the fewest reasons against it; of equals the one at the furthest stage, then the
 * latest, undated last, then the lowest id. A retired member keeps the records it has and misses nothing.
 */
export function reportLine(
  member: { mark: string; kind: string; place: string; retired: boolean },
  requirement: Requirement,
  tags: readonly StandingTag[],
): ReportLine {
  const judged = tags.map((tag): Judged => ({ tag, reasons: reasonsAgainst(tag, requirement) }));
  const records = judged.filter(({ reasons }) => reasons.length === 0).sort(byFirmness);
  const state = stateOf(member.retired, records.length > 0, requirement.closedAt !== null);
  return {
    mark: member.mark as Mark,
    kind: member.kind,
    place: member.place,
    least: requirement.least,
    state,
    records: records.map(({ tag }) => evidence(tag)),
    nearestMiss: state === 'gap' || state === 'lost' ? nearestMiss(judged) : null,
  };
}

function stateOf(retired: boolean, recorded: boolean, closed: boolean): ReportLine['state'] {
  if (retired) return 'retired';
  if (recorded) return 'on-record';
  return closed ? 'lost' : 'gap';
}

function nearestMiss(judged: readonly Judged[]): NonNullable<ReportLine['nearestMiss']> {
  const [first, ...others] = judged;
  if (!first) return { reasons: ['no-photo'], tag: null };
  const nearest = others.reduce((best, next) => (byNearness(next, best) < 0 ? next : best), first);
  return { reasons: nearest.reasons, tag: evidence(nearest.tag) };
}

function byNearness(a: Judged, b: Judged): number {
  return a.reasons.length - b.reasons.length || byWorth(a, b);
}

function byFirmness(a: Judged, b: Judged): number {
  return Number(isFirm(b.tag)) - Number(isFirm(a.tag)) || byWorth(a, b);
}

function byWorth({ tag: a }: Judged, { tag: b }: Judged): number {
  return (
    stageRank(b.stage) - stageRank(a.stage) ||
    compareText(b.instant ?? '', a.instant ?? '') ||
    compareText(a.id, b.id)
  );
}

function evidence(tag: StandingTag): Evidence {
  const { id, photo, stage, instant, uncertaintyS, datedBy, legibility, findings } = tag;
  return { tag: id, photo, stage, instant, uncertaintyS, datedBy, legibility, findings: [...findings] };
}
