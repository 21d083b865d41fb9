import { axisOf } from '#domain/frame/axis-of';
import { gridReader } from '#domain/frame/grid-reader';
import type { InventedHouse } from '#domain/frame/invented/invented-house';
import { lexiconOf } from '#domain/lexicon/lexicon';
import { findKind, trackOf } from '#domain/lexicon/track-of-kind';
import { usualLie } from '#domain/lexicon/usual-lie';
import { reportClosings, type ClosingReport } from '#domain/record/closing-report';
import type { ReportLine } from '#domain/record/report-line';
import type { StandingTag } from '#domain/record/requirement';
import { hiddenByZones, type MemberInSpace } from '#domain/record/zone-hides';

const lexicon = lexiconOf([]);

/** The members of an invented house in space; throws where one of them cannot be. */
export function membersInSpace({ members, grid }: InventedHouse): MemberInSpace[] {
  const reader = gridReader(grid);
  return members.map(({ mark, kind: name, setOut }) => {
    const read = axisOf(setOut, usualLie(name, lexicon), reader);
    if (!read.ok) throw new Error(`${mark}: ${read.problem.reason}`);
    const kind = findKind(name, lexicon) ?? null;
    return { mark, kind, track: trackOf(null, name, lexicon), axis: read.axis };
  });
}

type Closed = Readonly<Record<string, string>>;

/** The report of an invented house on 1 May 2026; `closed` are closed at an instant. */
export function inventedClosings(
  house: InventedHouse,
  tags: readonly StandingTag[],
  closed: Closed = {},
): ClosingReport {
  const except = new Set<string>();
  const zoned = house.coverings.map(({ name, kind, zone }) => ({ id: name, kind, zone, except }));
  const reader = gridReader(house.grid);
  const inSpace = membersInSpace(house);
  const hidden = hiddenByZones(zoned, inSpace, reader, []);
  return reportClosings({
    members: inSpace.map(({ mark, axis }) => ({ mark, kind: '', place: '', retired: false, axis })),
    coverings: house.coverings.map(({ name, kind, plannedDay }) => {
      const closedAt = closed[name] ?? null;
      return {
        ...{ id: name, name, kind, plannedDay, closedAt, closedDay: closedAt && closedAt.slice(0, 10) },
        hides: hidden.get(name) ?? [],
      };
    }),
    ...{ tags, asOf: '2026-05-01T00:00:00.000Z', today: '2026-05-01', reader },
  });
}

/** What the report says of each covering's members, by covering and mark. */
export function inventedReport(
  house: InventedHouse,
  tags: readonly StandingTag[],
  closed: Closed = {},
): Map<string, ReportLine> {
  const report = inventedClosings(house, tags, closed);
  const lines = report.days.flatMap(({ coverings }) =>
    coverings.flatMap(({ name, lines: own }) => own.map((line) => [`${name}: ${line.mark}`, line] as const)),
  );
  return new Map(lines);
}
