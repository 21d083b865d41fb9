import type { FrameMemberView } from '../contract/frame-views.ts';
import type { ClosingReportView } from '../contract/report-views.ts';
import type { ShotListView, ShotPlaceView, ShotView } from '../contract/shot-views.ts';
import type { CoveringView } from '../contract/views.ts';
import { pointOn } from '../frame/axis-of.ts';
import type { Convex } from '../frame/clip.ts';
import type { Grid } from '../frame/grid.ts';
import type { GridReader } from '../frame/grid-reader.ts';
import { nameStretch } from '../frame/name-stretch.ts';
import { opaqueBody } from '../frame/opaque-body.ts';
import type { Axis, Point } from '../frame/set-out.ts';
import { stageRank } from '../frame/stage.ts';
import type { Mark } from '../frame/mark.ts';
import { compareText } from '../frame/mark-order.ts';
import { groupBy } from '../group-by.ts';
import { footingOf } from './footing.ts';
import { looksOf } from './look.ts';
import { liesAt, type Protection } from './protection.ts';
import { tripleOf } from './sight.ts';
import { shotList, type MissingStretch, type Shot } from './shot-list.ts';
import { lengthOf, SHORTEST_GAP_MM, unionOf, type Stretch } from './stretches.ts';

type Report = Pick<ClosingReportView, 'asOf' | 'today' | 'days'>;
type CoveringReport = Report['days'][number]['coverings'][number];
type Line = CoveringReport['lines'][number];

export interface ShotsInput {
  readonly report: Report;
  readonly members: readonly Pick<FrameMemberView, 'mark' | 'axis' | 'retired' | 'seen'>[];
  readonly coverings: readonly Pick<CoveringView, 'kind' | 'zone' | 'closed'>[];
  readonly protection: readonly Protection[];
  readonly reader: GridReader | null;
  /** What closes within so many days, or should have closed already; 'all': later or without a day, too. */
  readonly days: number | 'all';
}

interface Gap {
  readonly covering: CoveringReport;
  readonly line: Line;
  readonly axis: Axis | null;
}

/**
 * The gaps of a report as one walk (record/shot-list). What has no place in space stands apart, in the order of the
 * report; without a grid that is everything.
 */
export function shotsOfReport(input: ShotsInput): ShotListView {
  const { report, members, coverings, protection, reader, days } = input;
  const axes = new Map(members.map(({ mark, axis }) => [mark, axis]));
  const gaps = report.days
    .flatMap((day) => day.coverings)
    .filter(({ closedAt }) => closedAt === null)
    .flatMap((covering) =>
      covering.lines
        .filter(({ state }) => state === 'gap')
        .map((line): Gap => ({ covering, line, axis: (reader && axes.get(line.mark)) ?? null })),
    );
  const wanted = gaps.filter(({ covering }) => isSoon(covering, days));
  const inSpace = wanted.filter(({ axis }) => axis !== null);
  return {
    asOf: report.asOf,
    today: report.today,
    grid: reader && reader.grid,
    coverings: [...new Set(wanted.map(({ covering }) => covering))].map(
      ({ id, name, kind, plannedDay, daysLeft }) => ({ id, name, kind, plannedDay, daysLeft }),
    ),
    ...(reader ? walk(inSpace, { members, coverings, reader }) : { places: [], unseen: [] }),
    placeless: eachOnce(wanted.filter(({ axis }) => axis === null).map((gap) => viewOf(gap, [], reader))),
    asked: report.days.flatMap((day) => day.coverings).map(askedOf),
    lying: lyingAt(report.asOf, protection),
    later: gaps.length - wanted.length,
  };
}

const isSoon = ({ daysLeft }: CoveringReport, days: ShotsInput['days']) =>
  days === 'all' || (daysLeft !== null && daysLeft <= days);

const plain = ({ from, to }: Stretch): Stretch => ({ from, to });

function askedOf({ id, name, closedAt, lines }: CoveringReport): ShotListView['asked'][number] {
  return {
    ...{ id, name, hasClosed: closedAt !== null },
    lines: lines.map(({ mark, state, hidden, missing, lostBefore }) => ({
      ...{ mark, state, hidden: hidden && plain(hidden) },
      ...{ missing: missing.map(plain), lostBefore: lostBefore.map(plain) },
    })),
  };
}

function lyingAt(asOf: string, protection: readonly Protection[]): ShotListView['lying'] {
  return protection
    .filter((one) => liesAt(one, asOf))
    .sort((a, b) => compareText(a.laidAt, b.laidAt) || compareText(a.id, b.id))
    .map(({ id, name, mark, stretch, laidAt }) => ({
      ...{ id, name, mark: mark as Mark, since: laidAt, stretch: stretch && plain(stretch) },
    }));
}

type Ground = Pick<ShotsInput, 'members' | 'coverings'> & { readonly reader: GridReader };

function walk(gaps: readonly Gap[], { members, coverings, reader }: Ground) {
  const axes = new Map(
    gaps.flatMap(({ line, axis }) => (axis ? [[line.mark as string, axis] as const] : [])),
  );
  const closed = coverings.filter((covering) => covering.closed !== null);
  const opaque = closed.flatMap((covering) => bodyOf(covering, reader));
  const floors = closed.filter(({ kind }) => kind === 'floor').flatMap((floor) => bodyOf(floor, reader));
  const { places, unseen } = shotList({
    reader,
    opaque,
    missing: gaps.flatMap(missingOf),
    members: members.flatMap(({ mark, axis, retired, seen }) =>
      axis && !retired && stands(seen) ? [{ mark, axis }] : [],
    ),
    isFirm: (place) => footingOf(place, floors, reader.grid) !== 'none',
  });
  const gapOf = new Map(gaps.map((gap) => [keyOf(gap.line.mark, gap.covering.id), gap]));
  const views = (shots: readonly Shot[]) => joined(shots, gapOf, reader);
  return {
    places: places.map((place) => {
      const { level, before, between, eye, closes, shots } = place;
      return {
        ...{ level, before, closes, between: [between[0], between[1]] as [string, string] },
        eye: planPoint(eye),
        footing: footingOf(place, floors, reader.grid),
        turns: turnsOf(eye, views(shots), axes, reader.grid),
      };
    }),
    unseen: (['blocked', 'out-of-reach'] as const).flatMap((reason) =>
      eachOnce(views(unseen.filter((shot) => shot.reason === reason))).map((shot) => ({ ...shot, reason })),
    ),
  };
}

/** Which ways one turns at a place, and what is seen that way; of a shot its middle decides. */
function turnsOf(
  eye: Point,
  shots: readonly ShotView[],
  axes: ReadonlyMap<string, Axis>,
  grid: Grid,
): ShotPlaceView['turns'] {
  const turned = shots.flatMap((shot) => {
    const axis = axes.get(shot.mark);
    const middles = shot.stretches.map(({ from, to }) => (from + to) / 2);
    const [look] = axis
      ? looksOf(
          eye,
          middles.map((at) => tripleOf(pointOn(axis, at))),
          grid,
        )
      : [];
    return look ? [{ look, shot }] : [];
  });
  return [...groupBy(turned, ({ look }) => JSON.stringify(look)).values()]
    .flatMap((own) => (own[0] ? [{ look: own[0].look, shots: eachOnce(own.map(({ shot }) => shot)) }] : []))
    .sort((a, b) => b.shots.length - a.shots.length);
}

/** What has only been cut lies on its trestles, and what nobody has seen may do so as well. */
const stands = (seen: FrameMemberView['seen']) =>
  seen.some(({ stage }) => stageRank(stage) >= stageRank('raised'));

function bodyOf({ zone }: Pick<CoveringView, 'zone'>, reader: GridReader): Convex[] {
  const read = zone && opaqueBody(zone, reader);
  return read?.ok ? [read.body] : [];
}

function missingOf({ covering, line, axis }: Gap): MissingStretch[] {
  if (!axis) return [];
  const { mark, missing, hidden } = line;
  const stretches = missing.length > 0 ? missing : [hidden ?? { from: 0, to: axis.length }];
  return stretches.map(({ from, to }) => ({
    ...{ mark, axis, covering: covering.id, closes: covering.plannedDay },
    stretch: { from, to },
  }));
}

const keyOf = (mark: string, covering: string) => `${covering} ${mark}`;

/** One shot of a member for a covering, however many of its parts are missing. */
function joined(shots: readonly Shot[], gapOf: ReadonlyMap<string, Gap>, reader: GridReader): ShotView[] {
  const groups = groupBy(shots, ({ mark, covering }) => keyOf(mark, covering));
  return [...groups].flatMap(([key, own]) => {
    const gap = gapOf.get(key);
    return gap ? [viewOf(gap, own, reader)] : [];
  });
}

function viewOf({ covering, line, axis }: Gap, shots: readonly Shot[], reader: GridReader | null): ShotView {
  const { mark, kind, place, least, views, nearestMiss, lengthMm } = line;
  const stretches = axis ? unionOf(shots.flatMap((shot) => shot.stretches)) : [];
  return {
    ...{ mark, kind, place, least, views, coverings: [covering.id] },
    stretches: stretches.flatMap((stretch) =>
      axis
        ? {
            ...nameStretch(stretch, axis, reader),
            start: planPoint(pointOn(axis, stretch.from)),
            end: planPoint(pointOn(axis, stretch.to)),
          }
        : [],
    ),
    whole: lengthMm === null || lengthMm - lengthOf(stretches) < SHORTEST_GAP_MM,
    nearestMiss: nearestMiss?.reasons[0] ?? null,
  };
}

/** What one photo shows for two coverings is one shot: the same parts at the same stage. The first says why. */
function eachOnce(shots: readonly ShotView[]): ShotView[] {
  const same = groupBy(shots, ({ mark, least, stretches }) =>
    JSON.stringify([mark, least, stretches.map(plain)]),
  );
  return [...same.values()].flatMap(([first, ...others]) =>
    first
      ? {
          ...first,
          coverings: [first, ...others].flatMap(({ coverings }) => coverings),
          views: Math.max(first.views, ...others.map(({ views }) => views)),
          whole: [first, ...others].every(({ whole }) => whole),
        }
      : [],
  );
}

const planPoint = ({ x, y }: { x: number; y: number }) => ({ x: Math.round(x), y: Math.round(y) });
