import type { NextClosingsView } from '../contract/journal-views.ts';
import type { ClosingReport } from './closing-report.ts';

type Covering = ClosingReport['days'][number]['coverings'][number];
type Next = NextClosingsView['complete']['coverings'][number];

export interface NextLimits {
  /** Coverings with gaps that are told with their members: so many, */
  readonly coverings: number;
  /** and none that closes after so many days, unless nothing closes before. */
  readonly days: number;
  /** Members told of each. */
  readonly missing: number;
  /** Coverings named of those that are told without. */
  readonly named: number;
}

/**
 * What closes next with what is missing for it, cut to what one page can hold: open coverings by their
 * planned day, those without a day last; each keeps its first gaps in the order of the report.
 */
export function nextClosings({ days }: ClosingReport, limits: NextLimits): NextClosingsView {
  const open = days
    .flatMap(({ coverings }) => coverings)
    .filter(({ closedAt }) => closedAt === null)
    .sort((a, b) => soon(a) - soon(b) || 0);
  const withGaps = open.filter(({ counts }) => counts.gaps > 0);
  const isNext = (covering: Covering, i: number) =>
    i === 0 || (i < limits.coverings && soon(covering) <= limits.days);
  const named = (coverings: readonly Covering[]) => ({
    coverings: coverings.slice(0, limits.named).map(plain),
    more: Math.max(0, coverings.length - limits.named),
  });
  return {
    gaps: withGaps.filter(isNext).map((covering) => ({
      ...plain(covering),
      ...firstGaps(covering, limits.missing),
    })),
    later: named(withGaps.filter((covering, i) => !isNext(covering, i))),
    complete: named(open.filter(({ counts }) => counts.gaps === 0 && counts.hidden + counts.before > 0)),
    hidesNothing: named(open.filter(({ counts }) => counts.hidden + counts.before === 0)),
  };
}

/** Days until it closes; Infinity minus itself is no number, hence `|| 0` above keeps the report's order. */
const soon = ({ daysLeft }: Covering) => daysLeft ?? Infinity;

function plain({ lines: _, closedAt: __, layers: ___, ...covering }: Covering): Next {
  return covering;
}

function firstGaps({ lines }: Covering, limit: number) {
  const gaps = lines.filter(({ state }) => state === 'gap');
  const missing = gaps.slice(0, limit).map(({ records: _, ...line }) => line);
  return { missing, more: gaps.length - missing.length };
}
