import type { ClosingReportView, MissReason } from '../contract/report-views.ts';
import type { Mark } from '../frame/mark.ts';
import { compareText } from '../frame/mark-order.ts';
import type { GridReader } from '../frame/grid-reader.ts';
import { nameStretch } from '../frame/name-stretch.ts';
import { groupBy } from '../group-by.ts';
import { stageRank } from '../frame/stage.ts';
import type { ReportMember } from './report-member.ts';
import { shownParts, WHOLE } from './shown-parts.ts';
import type { Protection } from './protection.ts';
import { coveredTimes, meets, without, type Stretch } from './stretches.ts';
import { isFirm, reasonsAgainst, type Requirement, type StandingTag } from './requirement.ts';

export type ReportLine = ClosingReportView['days'][number]['coverings'][number]['lines'][number];
type Evidence = ReportLine['records'][number];

interface Judged {
  readonly tag: StandingTag;
  readonly reasons: MissReason[];
}

/**
 * One hidden member: its records, firm ones first and of those the best, or the nearest miss. It is on
 * record where as many photos as are asked for show each part of what is hidden. The nearest miss is a
 * record that is not enough, else the tag with the fewest reasons against it; of equals the one at the
 * furthest stage, then the latest, undated last, then the lowest id. A retired member keeps the records it
 * has and misses nothing. What another layer had hidden before is not missed here; where that is all of it and
 * has no record, it is `hidden-before`. `lying`: the protection that lies over it today.
 */
export function reportLine(
  member: Pick<ReportMember, 'mark' | 'kind' | 'place' | 'retired' | 'axis'>,
  requirement: Requirement,
  tags: readonly StandingTag[],
  reader: GridReader | null = null,
  lying: readonly Protection[] = [],
): ReportLine {
  const judged = tags.map((tag): Judged => ({ tag, reasons: reasonsAgainst(tag, requirement) }));
  const records = judged.filter(({ reasons }) => reasons.length === 0).sort(byFirmness);
  const { hidden = null, views = 1, before = [] } = requirement;
  const left = without([hidden ?? WHOLE], before);
  const isBefore = left.length === 0;
  const asked = { hidden, views, parts: isBefore ? [hidden ?? WHOLE] : left };
  const counting = records.map(({ tag }) => tag);
  const missing = missingParts(asked, counting);
  const state = stateOf(member.retired, missing.length === 0, isBefore, requirement.closedAt !== null);
  const isMissed = state === 'gap' || state === 'lost';
  const named = (stretch: Stretch) => nameStretch(stretch, member.axis ?? null, reader);
  return {
    mark: member.mark as Mark,
    kind: member.kind,
    place: member.place,
    least: requirement.least,
    views,
    state,
    hidden: hidden && named(hidden),
    missing: isMissed && hidden && isPart(missing, hidden) ? missing.map(named) : [],
    lostBefore: (isBefore || member.retired ? [] : lostBefore(asked, before, counting)).map(named),
    lengthMm: hidden ? hidden.to - hidden.from : (member.axis?.length ?? null),
    completeAt: missing.length === 0 ? completedAt(asked, records) : null,
    records: records.map(({ tag }) => evidence(tag)),
    nearestMiss: isMissed ? (notEnough(judged, records, { hidden, missing }) ?? nearestMiss(judged)) : null,
    hiddenAt: requirement.closedAt,
    before: null,
    otherFace: null,
    waiver: null,
    liesUnder: state === 'gap' ? liesUnder(lying, hidden, missing) : null,
  };
}

interface Asked {
  readonly hidden: Stretch | null;
  readonly views: number;
  /** Of what is hidden, all that is to be on record. */
  readonly parts: readonly Stretch[];
}

function missingParts({ hidden, views, parts }: Asked, records: readonly StandingTag[]): Stretch[] {
  // By far the most tags show all of a member: nothing is to be measured then.
  if (views === 1 && records.some(({ stretch, sheeted = [] }) => !stretch && sheeted.length === 0)) return [];
  const byPhoto = groupBy(records, ({ photo }) => photo);
  const sets = [...byPhoto.values()].map((tags) => tags.flatMap((tag) => shownParts(tag, hidden)));
  return without(parts, coveredTimes(sets, views));
}

/** What of the parts that an earlier layer hid had no record then. */
function lostBefore(asked: Asked, before: readonly Stretch[], records: readonly StandingTag[]): Stretch[] {
  if (before.length === 0) return [];
  return without(missingParts({ ...asked, parts: [asked.hidden ?? WHOLE] }, records), asked.parts);
}

/** The instant of the photo with which nothing was missing any more: by halves, since nothing is missing again later. */
function completedAt(asked: Asked, records: readonly Judged[]): string | null {
  const tags = records.map(({ tag }) => tag).sort((a, b) => compareText(a.instant ?? '', b.instant ?? ''));
  let [few, enough] = [0, tags.length];
  while (enough - few > 1) {
    const half = Math.floor((few + enough) / 2);
    if (missingParts(asked, tags.slice(0, half)).length === 0) enough = half;
    else few = half;
  }
  return tags[enough - 1]?.instant ?? null;
}

const isPart = (missing: readonly Stretch[], hidden: Stretch) =>
  missing.some(({ from, to }) => from > hidden.from || to < hidden.to);

/** What lies over something that is still missing, and since when: of several the one that was laid first. */
function liesUnder(
  lying: readonly Protection[],
  hidden: Stretch | null,
  missing: readonly Stretch[],
): ReportLine['liesUnder'] {
  const [first] = lying
    .filter(({ stretch }) => stretch === null || hidden === null || meets(stretch, missing))
    .sort((a, b) => compareText(a.laidAt, b.laidAt) || compareText(a.id, b.id));
  return first ? { id: first.id, name: first.name, since: first.laidAt } : null;
}

/** Of records that count, and yet leave something missing, the best; a doubt may be all that keeps others from it. */
function notEnough(
  judged: readonly Judged[],
  [best]: readonly Judged[],
  { hidden, missing }: { hidden: Stretch | null; missing: readonly Stretch[] },
): ReportLine['nearestMiss'] {
  if (!best) return null;
  const reason = hidden && isPart(missing, hidden) ? 'part-only' : 'too-few-views';
  const isDoubted = judged.some(({ reasons }) => reasons.length === 1 && reasons[0] === 'disputed');
  return { reasons: [reason, ...(isDoubted ? ['disputed' as const] : [])], tag: evidence(best.tag) };
}

function stateOf(
  retired: boolean,
  recorded: boolean,
  isBefore: boolean,
  closed: boolean,
): ReportLine['state'] {
  if (retired) return 'retired';
  if (recorded) return 'on-record';
  if (isBefore) return 'hidden-before';
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
