import type { ClosingReportView } from '../contract/report-views.ts';
import { compareText } from '../frame/mark-order.ts';
import type { GridReader } from '../frame/grid-reader.ts';
import { stageRank, type Stage } from '../frame/stage.ts';
import { lineBeside } from '../frame/line-beside.ts';
import { groupBy } from '../group-by.ts';
import { daysBetween } from './days-between.ts';
import { layersOf, type LayerCovering, type Layers } from './layers.ts';
import { countLines, sumOf } from './report-counts.ts';
import { reportLine, type ReportLine } from './report-line.ts';
import type { ReportMember } from './report-member.ts';
import { keyCache, sortLines, sortNamed, type KeyOf } from './report-order.ts';
import { liesAt, type Protection } from './protection.ts';
import { standingOf, type HeldCovering } from './standing.ts';
import { WHOLE } from './shown-parts.ts';
import type { Stretch } from './stretches.ts';
import { withWaiver, type WaivedMember } from './waived.ts';
import type { StandingTag } from './requirement.ts';

export type ClosingReport = ClosingReportView;
type CoveringReport = ClosingReport['days'][number]['coverings'][number];

export interface ReportCovering extends LayerCovering {
  readonly hides: readonly HiddenMember[];
  /** What the release that stands accepts without a record, or the one that it closed under. */
  readonly waived?: readonly WaivedMember[];
  /** Without it nobody has inspected anything. */
  readonly held?: HeldCovering;
}

export interface HiddenMember {
  readonly mark: string;
  readonly least: Stage;
  /** Photos that must show each part; one where nothing is said. */
  readonly views?: number;
  /** Without one all of it. */
  readonly stretch?: Stretch | null;
}

export interface ClosingReportInput {
  readonly members: readonly ReportMember[];
  readonly coverings: readonly ReportCovering[];
  /** Not reported, but layers over the same members: they decide from when something is hidden. */
  readonly beside?: readonly LayerCovering[];
  /** Standing tags only: neither superseded nor withdrawn. */
  readonly tags: readonly StandingTag[];
  /** What lies over members, or has: what lies at `asOf` is named with the gaps under it. */
  readonly protection?: readonly Protection[];
  readonly asOf: string;
  /** The day of `asOf` in the house's zone. */
  readonly today: string;
  /** Without a grid stretches have no names. */
  readonly reader?: GridReader | null;
}

/**
 * What each covering hides and what is on record of it, by closing day (design 3.4). Marks in
 * normal form; instants UTC with milliseconds; days YYYY-MM-DD.
 * Days ascend, coverings without a day come last; in a day by name, then id. `hidden` counts what needs
 * a record (on record + gaps + lost + waived), beside it retired members and what an earlier layer had hidden, which is
 * lost there if anywhere; totals are sums over the coverings. While one face of a wall is open, what the covered
 * one hides is a gap, not lost.
 * A mark listed twice in a covering is one line, the latter entry with the further of its stages; a mark that the
 * schedule does not know counts as a standing member without kind and place.
 */
export function reportClosings(input: ClosingReportInput): ClosingReport {
  const facts = new Map(input.members.map((member) => [member.mark, member]));
  const tagsOf = tagsByMark(input.tags);
  const lying = groupBy(
    (input.protection ?? []).filter((one) => liesAt(one, input.asOf)),
    ({ mark }) => mark,
  );
  const keyOf = keyCache();
  const { reader = null, beside = [] } = input;
  const layers = layersOf([...input.coverings, ...beside], reader);
  const named = new Map([...input.coverings, ...beside].map(({ id, name }) => [id, name]));
  const coverings = input.coverings.map((covering) => {
    const towards = towardsOtherFace(covering, reader);
    const waived = new Map((covering.waived ?? []).map((one) => [one.mark as string, one]));
    const lines = hiddenOnce(covering).map(({ mark, least, views = 1, stretch }): ReportLine => {
      const member = facts.get(mark) ?? { mark, kind: '', place: '', retired: false };
      // Listed by hand it is hidden whole, and then wanted from end to end.
      const hidden = stretch ?? (member.axis ? { from: 0, to: member.axis.length } : null);
      const { since, before, by, otherFace } = layers.hidden(covering, mark, hidden ?? WHOLE);
      const requirement = { covering: covering.kind, least, closedAt: since, views, hidden, before };
      const line = reportLine(member, requirement, tagsOf.get(mark) ?? [], reader, lying.get(mark));
      return {
        ...withWaiver(line, waived.get(mark), covering.closedAt),
        before: by === null ? null : { covering: by, name: named.get(by) ?? '' },
        otherFace: otherFace && { towards, ...otherFace },
      };
    });
    return {
      day: closingDay(covering),
      report: coveringReport(covering, sortLines(lines, keyOf), input.today, layers),
    };
  });
  return {
    asOf: input.asOf,
    today: input.today,
    days: byDay(coverings, keyOf),
    counts: sumOf(coverings.map(({ report }) => report.counts)),
    unhidden: countUnhidden(input),
  };
}

function towardsOtherFace({ zone }: ReportCovering, reader: GridReader | null): string | null {
  if (reader === null || zone?.shape !== 'wall' || zone.face === 'both') return null;
  return lineBeside(zone, zone.face === 'lower' ? 'higher' : 'lower', reader);
}

function closingDay(covering: ReportCovering): string | null {
  return covering.closedAt === null ? covering.plannedDay : covering.closedDay;
}

function tagsByMark(tags: readonly StandingTag[]): Map<string, StandingTag[]> {
  const groups = new Map<string, StandingTag[]>();
  for (const tag of tags) {
    const group = groups.get(tag.mark);
    if (group) group.push(tag);
    else groups.set(tag.mark, [tag]);
  }
  return groups;
}

function hiddenOnce(covering: ReportCovering): HiddenMember[] {
  const once = new Map<string, HiddenMember>();
  for (const hidden of covering.hides) {
    const known = once.get(hidden.mark);
    const least = known && stageRank(known.least) > stageRank(hidden.least) ? known.least : hidden.least;
    once.set(hidden.mark, { ...hidden, least });
  }
  return [...once.values()];
}

function coveringReport(
  covering: ReportCovering,
  lines: ReportLine[],
  today: string,
  layers: Layers,
): CoveringReport {
  const { id, name, kind, plannedDay, closedAt } = covering;
  const daysLeft = closedAt === null && plannedDay !== null ? daysBetween(today, plannedDay) : null;
  const others = layers.beside(id).map((other) => other.id);
  const [counts, standing] = [countLines(lines), standingOf(covering.held, lines)];
  return { id, name, kind, plannedDay, closedAt, daysLeft, standing, counts, layers: others, lines };
}

function byDay(
  coverings: readonly { day: string | null; report: CoveringReport }[],
  keyOf: KeyOf,
): ClosingReport['days'] {
  const days = new Map<string | null, CoveringReport[]>();
  for (const { day, report } of coverings) {
    const group = days.get(day);
    if (group) group.push(report);
    else days.set(day, [report]);
  }
  return [...days]
    .sort(([a], [b]) => Number(a === null) - Number(b === null) || compareText(a ?? '', b ?? ''))
    .map(([day, reports]) => ({ day, coverings: sortNamed(reports, keyOf) }));
}

function countUnhidden({ members, coverings }: ClosingReportInput): number {
  const hidden = new Set(coverings.flatMap((covering) => covering.hides.map(({ mark }) => mark)));
  return members.filter((member) => !member.retired && !hidden.has(member.mark)).length;
}
