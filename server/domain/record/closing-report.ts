import type { CoveringKind } from '../contract/shapes.ts';
import type { ClosingReportView } from '../contract/report-views.ts';
import { compareText } from '../frame/mark-order.ts';
import type { GridReader } from '../frame/grid-reader.ts';
import { stageRank, type Stage } from '../frame/stage.ts';
import { daysBetween } from './days-between.ts';
import { countLines, sumOf } from './report-counts.ts';
import { reportLine, type ReportLine } from './report-line.ts';
import type { ReportMember } from './report-member.ts';
import { keyCache, sortLines, sortNamed, type KeyOf } from './report-order.ts';
import type { Stretch } from './stretches.ts';
import type { StandingTag } from './requirement.ts';

export type ClosingReport = ClosingReportView;
type CoveringReport = ClosingReport['days'][number]['coverings'][number];

export interface ReportCovering {
  readonly id: string;
  readonly name: string;
  readonly kind: CoveringKind;
  readonly plannedDay: string | null;
  /** null while it is open. */
  readonly closedAt: string | null;
  /** The day of `closedAt` in the house's zone. */
  readonly closedDay: string | null;
  readonly hides: readonly HiddenMember[];
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
  /** Standing tags only: neither superseded nor withdrawn. */
  readonly tags: readonly StandingTag[];
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
 * a record (on record + gaps + lost), retired members beside it; totals are sums over the coverings.
 * A mark listed twice in a covering is one line, the latter entry with the further of its stages; a mark that the
 * schedule does not know counts as a standing member without kind and place.
 */
export function reportClosings(input: ClosingReportInput): ClosingReport {
  const facts = new Map(input.members.map((member) => [member.mark, member]));
  const tagsOf = tagsByMark(input.tags);
  const keyOf = keyCache();
  const coverings = input.coverings.map((covering) => {
    const lines = hiddenOnce(covering).map(({ mark, least, views = 1, stretch }) => {
      const member = facts.get(mark) ?? { mark, kind: '', place: '', retired: false };
      // Listed by hand it is hidden whole, and then wanted from end to end.
      const hidden = stretch ?? (member.axis ? { from: 0, to: member.axis.length } : null);
      const requirement = { covering: covering.kind, least, closedAt: covering.closedAt, views, hidden };
      return reportLine(member, requirement, tagsOf.get(mark) ?? [], input.reader ?? null);
    });
    return {
      day: closingDay(covering),
      report: coveringReport(covering, sortLines(lines, keyOf), input.today),
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

function coveringReport(covering: ReportCovering, lines: ReportLine[], today: string): CoveringReport {
  const { id, name, kind, plannedDay, closedAt } = covering;
  const daysLeft = closedAt === null && plannedDay !== null ? daysBetween(today, plannedDay) : null;
  return { id, name, kind, plannedDay, closedAt, daysLeft, counts: countLines(lines), lines };
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
