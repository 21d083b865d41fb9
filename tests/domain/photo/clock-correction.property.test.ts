import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { correctClock, type ClockMark } from '#domain/photo/clock-correction';

const RUNS = { numRuns: 2000 };
const MINUTE = 60_000;

const someMarks: fc.Arbitrary<ClockMark[]> = fc
  .array(
    fc.record({
      // Few readings, so that marks often meet.
      minute: fc.nat(40),
      deltaS: fc.oneof(fc.integer({ min: -70, max: 70 }), fc.integer({ min: -9000, max: 9000 })),
      withinS: fc.integer({ min: 1, max: 600 }),
    }),
    { minLength: 1, maxLength: 7 },
  )
  .map((list) =>
    list.map(({ minute, deltaS, withinS }, i) => ({
      id: `m${i}`,
      clockMs: minute * 997 * MINUTE,
      deltaMs: deltaS * 1000,
      withinS,
    })),
  );
const someReading = fc.integer({ min: -20_000, max: 60_000 }).map((minutes) => minutes * MINUTE);

/** The rules read literally and answered by going through all marks; shares nothing with the program. */
function oracle(clock: number, said: readonly ClockMark[]) {
  const valid = said.filter((m, i) => !said.some((n, j) => j > i && n.clockMs === m.clockMs));
  const exact = valid.find((m) => m.clockMs === clock);
  if (exact) return { delta: exact.deltaMs, uncertainty: exact.withinS, wasSet: false };
  let below: ClockMark | undefined;
  let above: ClockMark | undefined;
  for (const m of valid) {
    if (m.clockMs < clock && (!below || m.clockMs > below.clockMs)) below = m;
    if (m.clockMs > clock && (!above || m.clockMs < above.clockMs)) above = m;
  }
  if (below && above) {
    const apart = Math.abs(above.deltaMs - below.deltaMs) / 1000;
    const days = (above.clockMs - below.clockMs) / 86_400_000;
    if (apart > 60 * (1 + days)) {
      const near = clock - below.clockMs > above.clockMs - clock ? above : below;
      return { delta: near.deltaMs, uncertainty: Math.max(Math.ceil(apart), near.withinS), wasSet: true };
    }
    const slope = (above.deltaMs - below.deltaMs) / (above.clockMs - below.clockMs);
    return {
      delta: Math.round(below.deltaMs + slope * (clock - below.clockMs)),
      uncertainty: Math.max(below.withinS, above.withinS),
      wasSet: false,
    };
  }
  const end = (below ?? above) as ClockMark;
  const drift = (2 * Math.abs(clock - end.clockMs)) / 86_400_000;
  return { delta: end.deltaMs, uncertainty: Math.ceil(end.withinS + drift), wasSet: false };
}

describe('correctClock on random marks', () => {
  it('says what going through all marks says', () => {
    fc.assert(
      fc.property(someMarks, someReading, (marks, clock) => {
        const found = correctClock(clock, marks);
        const expected = oracle(clock, marks);
        // Two ways to the same half millisecond may round apart.
        expect(Math.abs((found?.deltaMs ?? NaN) - expected.delta)).toBeLessThanOrEqual(1);
        expect([found?.uncertaintyS, found?.isSetBetween]).toEqual([expected.uncertainty, expected.wasSet]);
      }),
      RUNS,
    );
  });

  it('gives a mark its own value, the later said one where two meet', () => {
    fc.assert(
      fc.property(someMarks, (marks) => {
        for (const { clockMs } of marks) {
          const last = marks.filter((m) => m.clockMs === clockMs).at(-1);
          expect(correctClock(clockMs, marks)?.deltaMs).toBe(last?.deltaMs);
          expect(correctClock(clockMs, marks)?.uncertaintyS).toBe(last?.withinS);
        }
      }),
      RUNS,
    );
  });

  it('is continuous and keeps the order of pictures where nobody set the clock', () => {
    fc.assert(
      fc.property(someMarks, someReading, (marks, clock) => {
        const [a, b] = [clock, clock + 1000].map((ms) => correctClock(ms, marks));
        if (!a || !b || a.isSetBetween || b.isSetBetween) return;
        // Less than 60 s + 60 s a day between marks at least 997 minutes apart: under 0.15 s a second.
        expect(Math.abs(b.deltaMs - a.deltaMs)).toBeLessThan(151);
        expect(clock + a.deltaMs).toBeLessThan(clock + 1000 + b.deltaMs);
      }),
      RUNS,
    );
  });

  it('does not depend on the order of saying where no two marks meet', () => {
    fc.assert(
      fc.property(someMarks, someReading, (marks, clock) => {
        const alone = marks.filter((m, i) => marks.findIndex((n) => n.clockMs === m.clockMs) === i);
        expect(correctClock(clock, [...alone].reverse())).toEqual(correctClock(clock, alone));
      }),
      RUNS,
    );
  });
});
