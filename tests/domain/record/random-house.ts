import fc from 'fast-check';
import { FINDING_KINDS } from '#domain/record/findings/kinds';
import { CAPTURE_DOUBTS } from '#domain/photo/capture-doubts';
import { DATED_BY } from '#domain/contract/clock';
import { COVERING_KINDS } from '#domain/contract/shapes';
import { VERDICTS } from '#domain/photo/legibility';
import { STAGES } from '#domain/frame/stage';
import type { ClosingReportInput, ReportCovering } from '#domain/record/closing-report';

const MARKS = ['い一', 'い二', 'ろ一', 'N-2', 'N-10', 'R1', '又三'];
/** Few instants, so that photos often fall exactly on a closing. */
const INSTANTS = [1, 2, 3, 4].map((day) => `2026-04-0${day}T03:00:00.000Z`);
const DAYS = ['2026-04-01', '2026-04-02', '2026-04-03'];

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
      }),
    ),
  ),
);

const covering: fc.Arbitrary<ReportCovering> = fc
  .record({
    id: fc.constant(''),
    name: fc.constantFrom('wall 2', 'wall 10', 'loft'),
    kind: fc.constantFrom(...COVERING_KINDS),
    plannedDay: fc.constantFrom(null, ...DAYS),
    closedAt: fc.constantFrom(null, ...INSTANTS),
    closedDay: fc.constant(null),
    hides: fc.array(fc.record({ mark, least: stage }), { maxLength: 8 }),
  })
  .map((facts) => ({ ...facts, closedDay: facts.closedAt === null ? null : facts.closedAt.slice(0, 10) }));

const ACCEPTED = { by: 'Haru', reason: 'seen on site' };
const tags = fc
  .array(
    fc.record({
      mark,
      stage,
      dated: fc.constantFrom(null, ...INSTANTS),
      doubt: fc.constantFrom(null, null, ...CAPTURE_DOUBTS),
      // The instants lie whole days apart: just that, a hair more, and a day and a half.
      uncertaintyS: fc.constantFrom(0, 1, 60, 86_400, 86_401, 129_600, 172_800),
      datedBy: fc.constantFrom(...DATED_BY),
      legibility: fc.constantFrom(null, ...VERDICTS),
      findings: fc.array(
        fc.record({ kind: fc.constantFrom(...FINDING_KINDS), accepted: fc.constantFrom(null, ACCEPTED) }),
        {
          maxLength: 2,
        },
      ),
    }),
    { maxLength: 14 },
  )
  .map((list) =>
    list.map(({ dated, doubt, uncertaintyS, datedBy, ...tag }, i) => ({
      ...tag,
      id: `t${String((i * 7) % 15)}`,
      photo: `p${String(i)}`,
      instant: dated,
      uncertaintyS: dated === null ? 0 : uncertaintyS,
      datedBy: dated === null ? null : datedBy,
      // What has no date cannot have a doubtful one.
      doubt: dated === null ? null : doubt,
    })),
  );

export const randomHouse: fc.Arbitrary<ClosingReportInput> = fc.record({
  members,
  coverings: fc
    .array(covering, { maxLength: 4 })
    .map((list) => list.map((facts, i) => ({ ...facts, id: `c${String(i)}` }))),
  tags,
  asOf: fc.constant('2026-04-05T00:00:00.000Z'),
  today: fc.constant('2026-04-02'),
});
