import type { ClosingReportView } from '#domain/contract/report-views';
import { findingsToTell } from '#domain/record/findings-to-tell';
import { isCertainlyBefore, isFirm } from '#domain/record/requirement';
import { inZone, wallMs } from '#domain/photo/wall-time';

export type CoveringReport = ClosingReportView['days'][number]['coverings'][number];
export type CoveringLine = CoveringReport['lines'][number];
type Evidence = CoveringLine['records'][number];

export function findCovering(report: ClosingReportView | undefined, id: string): CoveringReport | undefined {
  return report?.days.flatMap(({ coverings }) => coverings).find((covering) => covering.id === id);
}

/** Closing is the thing to do once its day has come and nothing is missing; before that, what is missing is. */
export function isTimeToClose({ counts, daysLeft }: Pick<CoveringReport, 'counts' | 'daysLeft'>): boolean {
  return counts.gaps === 0 && daysLeft !== null && daysLeft <= 0;
}

/**
 * What would be lost by closing at this instant (UTC text): the gaps, and what has only records that were
 * taken at or after it, or so shortly before that they prove nothing. Nothing of a wall whose other face is open.
 */
export function lostByClosing(lines: readonly CoveringLine[], closedAt: string): CoveringLine[] {
  return lines.filter((line) => {
    const gone = goneBy(line, closedAt);
    if (gone === null) return false;
    return line.state === 'gap' || (line.state === 'on-record' && recordsAt(line, gone).length === 0);
  });
}

/** Lines as they are where no release accepts anything: one that comes after the closing does not. */
export function acceptingNothing(lines: readonly CoveringLine[]): CoveringLine[] {
  return lines.map((line) => (line.state === 'waived' ? { ...line, state: 'gap', waiver: null } : line));
}

/** Gaps that stay such, since they can be photographed from the other face. */
export function leftByClosing(lines: readonly CoveringLine[], closedAt: string): CoveringLine[] {
  return lines.filter((line) => line.state === 'gap' && goneBy(line, closedAt) === null);
}

/** When a member is out of sight if its covering closes at this instant; null: its other face is open. */
function goneBy({ otherFace }: CoveringLine, closedAt: string): string | null {
  if (otherFace === null) return closedAt;
  if (otherFace.closedAt === null) return null;
  return otherFace.closedAt > closedAt ? otherFace.closedAt : closedAt;
}

/** A member on record that has no record against which nothing speaks, with the best that it has. */
export interface Weighed {
  readonly line: CoveringLine;
  readonly record: Evidence;
}

/** What a closing at this instant would leave on record, but to be weighed. */
export function weighedByClosing(lines: readonly CoveringLine[], closedAt: string): Weighed[] {
  return lines.flatMap((line) => {
    const records = line.state === 'on-record' ? recordsAt(line, goneBy(line, closedAt)) : [];
    // The report puts the best first.
    const [record] = records;
    if (!record || records.some(isFirm)) return [];
    return [{ line, record: { ...record, findings: findingsToTell(records) } }];
  });
}

/** The records that are left of a member which is out of sight from this instant on, or never. */
function recordsAt({ records }: CoveringLine, gone: string | null): Evidence[] {
  if (gone === null) return records;
  return records.filter(
    ({ instant, uncertaintyS }) => instant !== null && isCertainlyBefore(instant, uncertaintyS, gone),
  );
}

export interface ClosingTime {
  readonly instant: string;
  readonly hour: 'plain' | 'ambiguous' | 'skipped';
}

/** A local time as an input gives it (YYYY-MM-DDTHH:MM) in a zone; of an hour that comes twice the first. */
export function closingTime(local: string, zone: string): ClosingTime | null {
  const wall = /^\d{4}-\d{2}-\d{2}T\d{2}:\d{2}/.test(local) ? wallMs(local) : null;
  if (wall === null) return null;
  const { hour, readings } = inZone(wall, zone);
  return { instant: new Date(readings[0].ms).toISOString(), hour };
}

/** When a covering closed, as it is being said. */
export type When =
  | { readonly is: 'now' }
  | { readonly is: 'earlier'; readonly text: string; readonly time: ClosingTime | null };

/** What is wrong with a time of closing, if anything. */
export function whenFault(when: When, now: Date): 'badTime' | 'future' | null {
  if (when.is === 'now') return null;
  if (when.time === null) return 'badTime';
  return when.time.instant > now.toISOString() ? 'future' : null;
}
