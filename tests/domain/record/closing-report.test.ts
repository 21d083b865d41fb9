import { describe, expect, it } from 'vitest';
import type { Verdict } from '#domain/photo/legibility';
import type { CaptureDoubt } from '#domain/photo/capture-doubts';
import { ClosingReportView } from '#domain/contract/report-views';
import type { Stage } from '#domain/frame/stage';
import { reportClosings, type ReportCovering } from '#domain/record/closing-report';
import type { StandingTag } from '#domain/record/requirement';

const uuid = (n: number) => `00000000-0000-4000-8000-${String(n).padStart(12, '0')}`;
const at = (day: number, hour = 3) =>
  `2026-04-${String(day).padStart(2, '0')}T${String(hour).padStart(2, '0')}:00:00.000Z`;

const member = (mark: string, retired = false) => ({ mark, kind: '貫', place: '', retired });
const tag = (
  n: number,
  mark: string,
  stage: Stage,
  instant: string | null,
  doubt: CaptureDoubt | null = null,
) => ({
  doubt,
  id: uuid(n),
  photo: uuid(100 + n),
  mark,
  stage,
  instant,
  uncertaintyS: 0,
  datedBy: instant === null ? null : ('file' as const),
  legibility: null as Verdict | null,
  findings: [],
});
const seen = (n: number, stage: Stage, instant: string | null) => ({
  tag: uuid(n),
  photo: uuid(100 + n),
  stage,
  instant,
  uncertaintyS: 0,
  datedBy: instant === null ? null : 'file',
  legibility: null as Verdict | null,
  findings: [],
});

const NORTH: ReportCovering = {
  id: uuid(900),
  name: 'North wall, first coat',
  kind: 'plaster',
  plannedDay: '2026-04-20',
  closedAt: null,
  closedDay: null,
  hides: [],
};
const closed = (closedAt: string, marks: readonly string[]): ReportCovering => ({
  ...NORTH,
  closedAt,
  closedDay: closedAt.slice(0, 10),
  hides: marks.map((mark) => ({ mark, least: 'pegged' as const })),
});

/** The one line of a house with one rail, one covering and these tags. */
function only(tags: readonly StandingTag[], covering: Partial<ReportCovering> = {}, retired = false) {
  const report = reportClosings({
    members: [member('い三', retired)],
    coverings: [{ ...NORTH, hides: [{ mark: 'い三', least: 'pegged' }], ...covering }],
    tags,
    asOf: at(10),
    today: '2026-04-10',
  });
  const [line] = report.days[0]?.coverings[0]?.lines ?? [];
  return { state: line?.state, records: line?.records, miss: line?.nearestMiss };
}

describe('one hidden rail, pegging asked for before plaster', () => {
  it('has no photo', () =>
    expect(only([])).toEqual({ state: 'gap', records: [], miss: { reasons: ['no-photo'], tag: null } }));

  it('is on record when seen pegged', () =>
    expect(only([tag(1, 'い三', 'pegged', at(5))])).toEqual({
      state: 'on-record',
      records: [seen(1, 'pegged', at(5))],
      miss: null,
    }));

  it('is on record when seen with lath on, which is past pegging', () =>
    expect(only([tag(1, 'い三', 'lath-on', at(5))]).state).toBe('on-record'));

  it('was photographed before pegging', () =>
    expect(only([tag(1, 'い三', 'raised', at(5))])).toEqual({
      state: 'gap',
      records: [],
      miss: { reasons: ['before-stage'], tag: seen(1, 'raised', at(5)) },
    }));

  it.each([
    [0, 'on-record', null],
    [60, 'on-record', null],
    [61, 'lost', 'perhaps-after-closing'],
    [43_200, 'lost', 'perhaps-after-closing'],
  ] as const)('a minute before closing and uncertain by %i s is %s', (uncertaintyS, state, reason) => {
    const before = tag(1, 'い三', 'pegged', '2026-04-08T02:59:00.000Z');
    const found = only([{ ...before, uncertaintyS }], closed('2026-04-08T03:00:00.000Z', ['い三']));
    expect([found.state, found.miss?.reasons[0] ?? null]).toEqual([state, reason]);
  });
  it('an open covering asks nothing of how sure a time is', () => {
    const unsure = { ...tag(1, 'い三', 'pegged', at(8)), uncertaintyS: 86_400 };
    expect(only([unsure]).state).toBe('on-record');
  });
  it.each(['before-first-day', 'after-upload'] as const)(
    'was photographed, with a date that cannot be: %s',
    (doubt) =>
      expect(only([tag(1, 'い三', 'pegged', at(5), doubt)])).toEqual({
        state: 'gap',
        records: [],
        miss: { reasons: [doubt], tag: seen(1, 'pegged', at(5)) },
      }),
  );

  it('was photographed, but when is not known', () =>
    expect(only([tag(1, 'い三', 'pegged', null)]).miss).toEqual({
      reasons: ['undated'],
      tag: seen(1, 'pegged', null),
    }));

  // The look has to come before the coat: IBC 110.3.6 (2021), "before any plastering is applied".
  it('shows plaster, not the rail', () =>
    expect(only([tag(1, 'い三', 'plastered', at(5))])).toEqual({
      state: 'gap',
      records: [],
      miss: { reasons: ['shows-the-covering'], tag: seen(1, 'plastered', at(5)) },
    }));

  it('lets a plastered wall count where boards, not plaster, hide it', () =>
    expect(only([tag(1, 'い三', 'plastered', at(5))], { kind: 'roof-boards' }).state).toBe('on-record'));

  it('is lost when photographed at the very instant of closing', () =>
    expect(only([tag(1, 'い三', 'pegged', at(8))], closed(at(8), ['い三']))).toEqual({
      state: 'lost',
      records: [],
      miss: { reasons: ['after-closing'], tag: seen(1, 'pegged', at(8)) },
    }));

  it('is on record when photographed a millisecond before', () =>
    expect(only([tag(1, 'い三', 'pegged', '2026-04-08T02:59:59.999Z')], closed(at(8), ['い三'])).state).toBe(
      'on-record',
    ));

  it('is lost, not a gap, once closed without a photo', () =>
    expect(only([], closed(at(8), ['い三'])).state).toBe('lost'));

  it('needs nothing when retired', () =>
    expect(only([], {}, true)).toEqual({ state: 'retired', records: [], miss: null }));

  it('says every reason of the nearest miss', () =>
    expect(only([tag(1, 'い三', 'cut', at(9))], closed(at(8), ['い三'])).miss?.reasons).toEqual([
      'before-stage',
      'after-closing',
    ]));

  it('takes the tag with the fewest reasons for the nearest miss', () =>
    expect(
      only([tag(1, 'い三', 'cut', at(9)), tag(2, 'い三', 'cut', at(4))], closed(at(8), ['い三'])).miss,
    ).toEqual({ reasons: ['before-stage'], tag: seen(2, 'cut', at(4)) }));

  it('takes the furthest stage, then the latest, then the lowest id of equal misses', () => {
    const cut = tag(1, 'い三', 'cut', at(6));
    const early = tag(2, 'い三', 'raised', at(4));
    const late = tag(4, 'い三', 'raised', at(5));
    const twin = tag(3, 'い三', 'raised', at(5));
    expect(only([cut, early]).miss?.tag?.tag).toBe(early.id);
    expect(only([early, late, cut]).miss?.tag?.tag).toBe(late.id);
    expect(only([late, twin, early]).miss?.tag?.tag).toBe(twin.id);
  });

  it('lists its records with the furthest stage first', () =>
    expect(
      only([tag(1, 'い三', 'pegged', at(6)), tag(2, 'い三', 'lath-on', at(5)), tag(3, 'い三', 'cut', at(4))])
        .records,
    ).toEqual([seen(2, 'lath-on', at(5)), seen(1, 'pegged', at(6))]));

  it('asks for the views and the part of the latter entry where it is listed twice', () => {
    const twice = [
      { mark: 'い三', least: 'pegged' as const, views: 2, stretch: { from: 0, to: 100 } },
      { mark: 'い三', least: 'cut' as const, views: 1, stretch: { from: 900, to: 1000 } },
    ];
    const seenAt = (from: number, to: number) =>
      only([{ ...tag(1, 'い三', 'pegged', at(5)), stretch: { from, to } }], { hides: twice }).state;
    expect([seenAt(0, 100), seenAt(900, 1000)]).toEqual(['gap', 'on-record']);
  });

  it('asks for the further stage where it is listed twice', () =>
    expect(
      only([tag(1, 'い三', 'pegged', at(5))], {
        hides: [
          { mark: 'い三', least: 'lath-on' },
          { mark: 'い三', least: 'cut' },
        ],
      }).miss?.reasons,
    ).toEqual(['before-stage']));
});

describe('a small house', () => {
  const west: ReportCovering = {
    ...closed('2026-04-08T15:30:00.000Z', ['い三', 'い十', 'い二']),
    id: uuid(901),
    name: 'West wall',
    closedDay: '2026-04-09',
  };
  const floor = {
    ...NORTH,
    id: uuid(902),
    name: 'Floor 10',
    kind: 'floor' as const,
    plannedDay: '2026-04-08',
  };
  const hides = ['N-10', 'N-2', 'い二'].map((mark) => ({ mark, least: 'raised' as const }));
  const report = reportClosings({
    members: [...['い三', 'い十', 'い二', 'N-10', 'N-2', 'free'].map((m) => member(m)), member('old', true)],
    coverings: [
      { ...NORTH, name: 'Someday', plannedDay: null, id: uuid(903) },
      { ...floor, hides: [...hides, { mark: 'old', least: 'raised' }] },
      west,
      { ...floor, id: uuid(904), name: 'Floor 2' },
    ],
    tags: [
      tag(1, 'い二', 'pegged', at(7)),
      tag(2, 'N-10', 'cut', at(7)),
      tag(3, 'old', 'cut', at(7)),
      tag(4, 'nowhere', 'pegged', at(7)),
    ],
    asOf: at(10),
    today: '2026-04-10',
  });

  it('fits the contract', () => expect(() => ClosingReportView.parse(report)).not.toThrow());

  it('goes by day, closed ones on the day of their zone, undecided ones last', () =>
    expect(report.days.map((d) => [d.day, d.coverings.map((c) => c.name)])).toEqual([
      ['2026-04-08', ['Floor 2', 'Floor 10']],
      ['2026-04-09', ['West wall']],
      [null, ['Someday']],
    ]));

  it('says how many days are left, below nothing when overdue, and none when closed or undecided', () =>
    expect(report.days.flatMap((d) => d.coverings.map((c) => c.daysLeft))).toEqual([-2, -2, null, null]));

  it('has these lines', () =>
    expect(
      report.days.flatMap((d) => d.coverings.flatMap((c) => c.lines.map((l) => [c.name, l.mark, l.state]))),
    ).toEqual([
      ['Floor 10', 'N-2', 'gap'],
      ['Floor 10', 'N-10', 'gap'],
      ['Floor 10', 'い二', 'on-record'],
      ['Floor 10', 'old', 'retired'],
      ['West wall', 'い三', 'lost'],
      ['West wall', 'い十', 'lost'],
      ['West wall', 'い二', 'on-record'],
    ]));

  it('has these counts', () => {
    expect(report.counts).toEqual({
      hidden: 6,
      onRecord: 2,
      firm: 2,
      gaps: 2,
      lost: 2,
      waived: 0,
      before: 0,
      retired: 1,
    });
    expect(report.unhidden).toBe(1);
  });
});

describe('daysLeft', () => {
  // 2028 is a leap year: 28 February to 1 March is two days (Gregorian calendar).
  it.each([
    ['2028-02-28', '2028-03-01', 2],
    ['2026-12-31', '2027-01-01', 1],
    ['2026-04-10', '2026-04-10', 0],
  ])('%s to %s', (today, plannedDay, days) => {
    const report = reportClosings({
      members: [],
      coverings: [{ ...NORTH, plannedDay }],
      tags: [],
      asOf: at(1),
      today,
    });
    expect(report.days[0]?.coverings[0]?.daysLeft).toBe(days);
  });
});

describe('a large house', () => {
  it('is reported whole: 10,000 members, 100,000 tags', () => {
    const marks = Array.from({ length: 10_000 }, (_, i) => `い${String(i % 100)}-${String(i)}`);
    const input = {
      members: marks.map((mark, i) => ({ ...member(mark), place: `floor ${String(i % 3)}` })),
      coverings: Array.from({ length: 20 }, (_, c) => ({
        ...NORTH,
        id: uuid(c),
        hides: marks.slice(c * 500, c * 500 + 500).map((mark) => ({ mark, least: 'pegged' as const })),
      })),
      tags: Array.from({ length: 100_000 }, (_, i) =>
        tag(i, marks[i % 7919] ?? '', i % 3 ? 'raised' : 'pegged', at(1 + (i % 28))),
      ),
      asOf: at(28),
      today: '2026-04-28',
    };
    const report = reportClosings(input);
    expect(report.counts).toMatchObject({ hidden: 10_000 });
  });
});
