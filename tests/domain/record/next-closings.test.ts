import { WHOLE_LINE } from '../../support/whole-line.ts';
import { expect, test } from 'vitest';
import type { Mark } from '#domain/frame/mark';
import type { ClosingReport } from '#domain/record/closing-report';
import { nextClosings } from '#domain/record/next-closings';

type Covering = ClosingReport['days'][number]['coverings'][number];
type Line = Covering['lines'][number];

const LIMITS = { coverings: 2, days: 10, missing: 3, named: 1 };

function line(state: Line['state'], n: number): Line {
  const nearestMiss: Line['nearestMiss'] = state === 'gap' ? { reasons: ['no-photo'], tag: null } : null;
  const facts = { mark: `い${n}` as Mark, kind: '柱', place: '', least: 'pegged' as const };
  return { ...facts, ...WHOLE_LINE, state, records: [], nearestMiss };
}

function covering(id: string, daysLeft: number | null, gaps: number, onRecord = 0): Covering {
  const lines = [
    ...Array.from({ length: gaps }, (_, n) => line('gap', n)),
    ...Array.from({ length: onRecord }, (_, n) => line('on-record', gaps + n)),
  ];
  const counts = {
    hidden: gaps + onRecord,
    onRecord,
    firm: onRecord,
    gaps,
    lost: 0,
    waived: 0,
    before: 0,
    retired: 0,
  };
  return {
    id,
    name: id,
    kind: 'plaster',
    plannedDay: null,
    closedAt: null,
    daysLeft,
    standing: { phase: 'planned', beyond: [], without: null, takenBack: null },
    counts,
    layers: [],
    lines,
  };
}

function report(...coverings: Covering[]): ClosingReport {
  const counts = { hidden: 0, onRecord: 0, firm: 0, gaps: 0, lost: 0, waived: 0, before: 0, retired: 0 };
  const days = coverings.map((one) => ({ day: null, coverings: [one] }));
  return { asOf: '2026-05-01T00:00:00.000Z', today: '2026-05-01', days, counts, unhidden: 0 };
}

test('what is late or closes first stands first, what has no day last; the rest is counted', () => {
  const { gaps, later } = nextClosings(
    report(
      covering('open end', null, 1),
      covering('soon', 3, 2),
      covering('late', -2, 1),
      covering('today', 0, 5),
    ),
    LIMITS,
  );
  expect(gaps.map(({ id }) => id)).toEqual(['late', 'today']);
  expect([later.coverings.map(({ id, counts }) => [id, counts.gaps]), later.more]).toEqual([
    [['soon', 2]],
    1,
  ]);
});

test('what closes much later is named without its members, unless nothing closes before', () => {
  const told = (...coverings: Covering[]) =>
    nextClosings(report(...coverings), LIMITS).gaps.map(({ id }) => id);
  expect(told(covering('soon', 10, 1), covering('far', 11, 1))).toEqual(['soon']);
  expect(told(covering('far', 60, 1), covering('open end', null, 1))).toEqual(['far']);
  expect(told(covering('open end', null, 1))).toEqual(['open end']);
});

test('of each the first gaps are told and the others counted; what is on record is not told', () => {
  const { gaps } = nextClosings(report(covering('wall', 1, 5, 2)), LIMITS);
  expect(gaps[0]?.missing.map(({ mark }) => mark)).toEqual(['い0', 'い1', 'い2']);
  expect(gaps[0]).toMatchObject({ more: 2, counts: { gaps: 5, onRecord: 2 } });
});

test('what is complete and what hides nothing yet are no gaps, and few of them are named', () => {
  const { gaps, complete, hidesNothing } = nextClosings(
    report(covering('done', 1, 0, 4), covering('done too', 2, 0, 1), covering('empty', 0, 0)),
    LIMITS,
  );
  expect(gaps).toEqual([]);
  expect([complete.coverings.map(({ id }) => id), complete.more]).toEqual([['done'], 1]);
  expect([hidesNothing.coverings.map(({ id }) => id), hidesNothing.more]).toEqual([['empty'], 0]);
});

test('what has closed is not told at all', () => {
  const closed = { ...covering('closed', null, 0), closedAt: '2026-04-01T00:00:00.000Z' };
  expect(nextClosings(report(closed), LIMITS)).toEqual({
    gaps: [],
    later: { coverings: [], more: 0 },
    complete: { coverings: [], more: 0 },
    hidesNothing: { coverings: [], more: 0 },
  });
});
