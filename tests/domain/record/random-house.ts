import fc from 'fast-check';
import { FINDING_KINDS } from '#domain/record/findings/kinds';
import { CAPTURE_DOUBTS } from '#domain/photo/capture-doubts';
import { DATED_BY } from '#domain/contract/clock';
import { COVERING_KINDS } from '#domain/contract/shapes';
import { VERDICTS } from '#domain/photo/legibility';
import type { Mm } from '#domain/frame/length';
import type { Axis } from '#domain/frame/set-out';
import type { Zone } from '#domain/frame/zone';
import { sheetedAt } from '#domain/record/protection';
import { STAGES } from '#domain/frame/stage';
import type { ClosingReportInput, ReportCovering } from '#domain/record/closing-report';
import type { WaivedMember } from '#domain/record/waived';
import type { Mark } from '#domain/frame/mark';
import { someReader } from '../../support/some-grid.ts';

const MARKS = ['い一', 'い二', 'ろ一', 'N-2', 'N-10', 'R1', '又三'];
/** Few instants, so that photos often fall exactly on a closing. */
const INSTANTS = [1, 2, 3, 4].map((day) => `2026-04-0${day}T03:00:00.000Z`);
const DAYS = ['2026-04-01', '2026-04-02', '2026-04-03'];

/** Few and short enough that an oracle can count their millimetres, with gaps about the least of 5 mm. */
const LENGTH_MM = 24;
const someStretch = (least: number) =>
  fc
    .tuple(fc.nat({ max: LENGTH_MM - least }), fc.integer({ min: least, max: LENGTH_MM }))
    .map(([from, long]) => ({ from, to: Math.min(LENGTH_MM, from + long) }));
/** No zone hides less than the least gap; a tag may show less. */
const hiddenStretch = fc.option(someStretch(5), { nil: null });
const seenStretch = fc.option(someStretch(1), { nil: null });
const axis: Axis = {
  start: { x: 0 as Mm, y: 0 as Mm, z: 1800 as Mm },
  end: { x: LENGTH_MM as Mm, y: 0 as Mm, z: 1800 as Mm },
  ...{ length: LENGTH_MM as Mm, width: 15 as Mm, depth: 105 as Mm },
  ...{ runs: 'level', level: null, assumed: [] },
};

const mark = fc.constantFrom(...MARKS);
const stage = fc.constantFrom(...STAGES);

const members = fc.uniqueArray(mark, { maxLength: MARKS.length }).chain((marks) =>
  fc.tuple(
    ...marks.map((text) =>
      fc.record({
        mark: fc.constant(text),
        kind: fc.constantFrom('貫', 'rafter', ''),
        place: fc.constantFrom('', 'loft', 'floor 1', 'floor 2'),
        retired: fc.boolean(),
        axis: fc.constantFrom(axis, axis, null),
      }),
    ),
  ),
);

/** Layers of one wall, from end to end or in one bay of it; a wall elsewhere; and what only lists its members. */
const wall = (line: string, from: string, face: 'both' | 'lower' | 'higher'): Zone => ({
  ...{ shape: 'wall', family: 'first', line, from, to: '三', bottom: 450, top: 3250 },
  ...{ face, over: 'over-posts' },
});
const zone = fc.option(
  fc
    .tuple(
      fc.constantFrom('い', 'い', 'い', 'ろ'),
      fc.constantFrom('一', '二'),
      fc.constantFrom('both' as const, 'lower' as const, 'higher' as const),
    )
    .map(([line, from, face]) => wall(line, from, face)),
  { nil: null },
);

/** What a release accepts of a member; as often as not less than what is missing, or at an earlier stage. */
const waivedMember: fc.Arbitrary<WaivedMember> = fc.record({
  mark: mark.map((text) => text as Mark),
  least: fc.constantFrom('plastered' as const, ...STAGES),
  views: fc.constantFrom(1, 3, 3),
  stretch: hiddenStretch,
  missing: fc.array(someStretch(1), { maxLength: 2 }),
  waiver: fc.record({
    release: fc.constantFrom('r1', 'r2'),
    at: fc.constantFrom(...INSTANTS),
    by: fc.constant(null),
    reason: fc.constantFrom('seen on site'),
    takenBack: fc.constantFrom(null, null, { at: INSTANTS[0] ?? '', by: null, reason: 'another wall' }),
  }),
});

const covering: fc.Arbitrary<ReportCovering> = fc
  .record({
    zone,
    id: fc.constant(''),
    name: fc.constantFrom('wall 2', 'wall 10', 'loft'),
    kind: fc.constantFrom(...COVERING_KINDS),
    plannedDay: fc.constantFrom(null, ...DAYS),
    closedAt: fc.constantFrom(null, ...INSTANTS),
    closedDay: fc.constant(null),
    hides: fc.array(fc.record({ mark, least: stage }), { maxLength: 8 }),
    // One for each mark: of a mark that is listed twice, the order of the list would decide.
    asked: fc.tuple(
      ...MARKS.map(() => fc.record({ views: fc.constantFrom(1, 1, 2, 3), stretch: hiddenStretch })),
    ),
    waived: fc.uniqueArray(waivedMember, { selector: (one) => one.mark, maxLength: 4 }),
  })
  .map(({ asked, ...facts }) => ({
    ...facts,
    hides: facts.hides.map((hidden) => ({ ...hidden, ...asked[MARKS.indexOf(hidden.mark)] })),
  }))
  .map((facts) => ({ ...facts, closedDay: facts.closedAt === null ? null : facts.closedAt.slice(0, 10) }));

const ACCEPTED = { by: 'Haru', reason: 'seen on site' };
const PHOTOS = 6;
const anyTag = fc.record({
  mark,
  stage,
  stretch: seenStretch,
  photo: fc.nat({ max: PHOTOS - 1 }),
  doubt: fc.constantFrom(null, null, ...CAPTURE_DOUBTS),
  // The instants lie whole days apart: just that, a hair more, and a day and a half.
  uncertaintyS: fc.constantFrom(0, 1, 60, 86_400, 86_401, 129_600, 172_800),
  datedBy: fc.constantFrom(...DATED_BY),
  legibility: fc.constantFrom(null, ...VERDICTS),
  findings: fc.array(
    fc.record({ kind: fc.constantFrom(...FINDING_KINDS), accepted: fc.constantFrom(null, ACCEPTED) }),
    { maxLength: 2 },
  ),
});
/** Nothing speaks against these, and they are of few members, so that several often count for one line. */
const soundTag = fc.tuple(anyTag, fc.constantFrom(...MARKS.slice(0, 2))).map(([tag, of]) => ({
  ...tag,
  ...{ mark: of, stage: 'lath-on' as const, doubt: null, uncertaintyS: 0, legibility: null, findings: [] },
}));

const tags = fc
  .tuple(
    fc.array(fc.oneof(anyTag, soundTag), { maxLength: 14 }),
    // All tags on a photo have its instant.
    fc.array(fc.constantFrom(null, ...INSTANTS, ...INSTANTS), { minLength: PHOTOS, maxLength: PHOTOS }),
  )
  .map(([list, instants]) =>
    list.map(({ photo, doubt, uncertaintyS, datedBy, ...tag }, i) => {
      const instant = instants[photo] ?? null;
      return {
        ...tag,
        id: `t${String((i * 7) % 15)}`,
        photo: `p${String(photo)}`,
        instant,
        uncertaintyS: instant === null ? 0 : uncertaintyS,
        datedBy: instant === null ? null : datedBy,
        // What has no date cannot have a doubtful one.
        doubt: instant === null ? null : doubt,
      };
    }),
  );

const protection = fc.array(
  fc.record({
    ...{ id: fc.constantFrom('a', 'b', 'c'), name: fc.constant('sheets'), mark },
    stretch: fc.option(someStretch(1), { nil: null }),
    laidAt: fc.constantFrom(...INSTANTS),
    // Some were lifted when they were laid, or before: those never lay there.
    liftedAt: fc.constantFrom(null, ...INSTANTS),
  }),
  { maxLength: 4 },
);

const bareHouse = fc.record({
  members,
  coverings: fc
    .array(covering, { maxLength: 4 })
    .map((list) => list.map((facts, i) => ({ ...facts, id: `c${String(i)}` }))),
  tags,
  protection,
  asOf: fc.constant('2026-04-05T00:00:00.000Z'),
  today: fc.constant('2026-04-02'),
  reader: fc.constant(someReader),
});

export const randomHouse: fc.Arbitrary<ClosingReportInput> = bareHouse.map((house) => {
  // What has no place in space is listed, and then lies under protection whole.
  const placed = new Set(house.members.filter((one) => one.axis !== null).map((one) => one.mark));
  const lain = house.protection.map((one, i) => ({
    ...{ ...one, id: `${one.id}${String(i)}` },
    stretch: placed.has(one.mark) ? one.stretch : null,
  }));
  const over = (tag: (typeof house.tags)[number]) => lain.filter((one) => one.mark === tag.mark);
  return {
    ...house,
    protection: lain,
    tags: house.tags.map((tag) => ({
      ...tag,
      sheeted: tag.instant === null ? [] : sheetedAt(tag.instant, tag.uncertaintyS, over(tag)),
    })),
  };
});
