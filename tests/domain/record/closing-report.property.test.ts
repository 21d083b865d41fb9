import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { ClosingReportView } from '#domain/contract/report-views';
import { compareMarks } from '#domain/frame/mark-order';
import { reportClosings, type ClosingReport, type ClosingReportInput } from '#domain/record/closing-report';
import { isBeyondDoubt, oracleLines, type OracleLine } from './closing-report-oracle.ts';
import { randomHouse } from './random-house.ts';

const RUNS = { numRuns: 2000 };

function flat(report: ClosingReport): OracleLine[] {
  return report.days
    .flatMap((day) => day.coverings)
    .flatMap((covering) =>
      covering.lines.map((line) => ({
        covering: covering.id,
        mark: line.mark,
        least: line.least,
        views: line.views,
        state: line.state,
        records: line.records.map((record) => record.tag).sort(),
        firm: line.records.slice(0, 1).some(isBeyondDoubt),
        missing: line.missing.map(({ from, to }) => `${String(from)}–${String(to)}`),
        length: line.lengthMm,
        completeAt: line.completeAt,
        gone: line.hiddenAt,
        miss: line.nearestMiss && {
          reasons: line.nearestMiss.reasons,
          tag: line.nearestMiss.tag?.tag ?? null,
        },
        liesUnder: line.liesUnder && line.liesUnder.id,
        waivedBy: line.waiver && line.waiver.release,
      })),
    );
}

const byName = (a: OracleLine, b: OracleLine) =>
  `${a.covering}|${a.mark}` < `${b.covering}|${b.mark}` ? -1 : 1;

describe('reportClosings on random houses', () => {
  it('says of every hidden member what going through everything says', () => {
    fc.assert(
      fc.property(randomHouse, (house) => {
        expect(flat(reportClosings(house)).sort(byName)).toEqual(oracleLines(house).sort(byName));
      }),
      { numRuns: 10_000 },
    );
    // Ten thousand houses, millimetre by millimetre, beside whatever else runs.
  }, 60_000);

  it('counts what its lines say', () => {
    fc.assert(
      fc.property(randomHouse, (house) => {
        const report = reportClosings(house);
        const lines = oracleLines(house);
        const number = (state: string, covering?: string) =>
          lines.filter((l) => l.state === state && (covering ?? l.covering) === l.covering).length;
        const counts = (covering?: string) => ({
          hidden: ['on-record', 'gap', 'lost', 'waived'].reduce((sum, is) => sum + number(is, covering), 0),
          onRecord: number('on-record', covering),
          firm: lines.filter(
            (l) => l.state === 'on-record' && l.firm && (covering ?? l.covering) === l.covering,
          ).length,
          gaps: number('gap', covering),
          lost: number('lost', covering),
          waived: number('waived', covering),
          before: number('hidden-before', covering),
          retired: number('retired', covering),
        });
        expect(report.counts).toEqual(counts());
        for (const covering of report.days.flatMap((day) => day.coverings))
          expect(covering.counts).toEqual(counts(covering.id));
        const standing = house.members.filter((m) => !m.retired);
        expect(report.unhidden).toBe(
          standing.filter((m) => !house.coverings.some((c) => c.hides.some((h) => h.mark === m.mark))).length,
        );
      }),
      RUNS,
    );
  });

  it('puts each covering once under its day, in order', () => {
    fc.assert(
      fc.property(randomHouse, (house) => {
        const { days } = reportClosings(house);
        expect(days.flatMap((day) => day.coverings.map((c) => c.id)).sort()).toEqual(
          house.coverings.map((c) => c.id).sort(),
        );
        const said = days.map((day) => day.day ?? '9999');
        expect(said).toEqual([...new Set(said)].sort());
        for (const { day, coverings } of days)
          for (const { id, closedAt, plannedDay } of coverings)
            expect([id, day]).toEqual([id, closedAt === null ? plannedDay : closedAt.slice(0, 10)]);
        for (const { coverings } of days)
          coverings.slice(1).forEach((c, i) => {
            const before = coverings[i];
            const order = compareMarks(before?.name ?? '', c.name);
            expect(order < 0 || (order === 0 && (before?.id ?? '') < c.id)).toBe(true);
          });
      }),
      RUNS,
    );
  });

  it('lists what is missing first, then by place and mark', () => {
    const group = { gap: 0, lost: 0, waived: 1, 'on-record': 2, 'hidden-before': 3, retired: 4 };
    fc.assert(
      fc.property(randomHouse, (house) => {
        for (const { lines } of reportClosings(house).days.flatMap((day) => day.coverings))
          lines.slice(1).forEach((line, i) => {
            const before = lines[i] ?? line;
            const groups = group[before.state] - group[line.state];
            const places =
              before.place === line.place
                ? 0
                : before.place === ''
                  ? 1
                  : line.place === ''
                    ? -1
                    : compareMarks(before.place, line.place);
            const order = groups || places || compareMarks(before.mark, line.mark);
            expect(order).toBeLessThan(0);
          });
      }),
      RUNS,
    );
  });

  it('does not depend on the order of its input, and fits the contract but for made-up ids', () => {
    const turn = <T>(list: readonly T[]) => [...list].reverse();
    const Shape = ClosingReportView.pick({ asOf: true, today: true, counts: true, unhidden: true });
    fc.assert(
      fc.property(randomHouse, (house: ClosingReportInput) => {
        const report = reportClosings(house);
        const turned = {
          ...house,
          members: turn(house.members),
          coverings: turn(house.coverings).map((c) => ({ ...c, hides: turn(c.hides) })),
          tags: turn(house.tags).map((tag) => ({ ...tag, sheeted: turn(tag.sheeted ?? []) })),
          protection: turn(house.protection ?? []),
        };
        expect(reportClosings(turned)).toEqual(report);
        Shape.parse(report);
      }),
      RUNS,
    );
  });
});
