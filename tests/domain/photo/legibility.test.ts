import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  readability,
  sharpnessOf,
  sizeVerdict,
  VERDICTS,
  type LegibilityMeasures,
} from '#domain/photo/legibility';

const GOOD: LegibilityMeasures = {
  acrossPx: 200,
  fineBlur: 0.01,
  coarseBlur: 0.01,
  middle: 120,
  shadows: 0,
  highlights: 0,
};
const judge = (worse: Partial<LegibilityMeasures>) => readability({ ...GOOD, ...worse });
const rank = (measures: LegibilityMeasures) => VERDICTS.indexOf(readability(measures).verdict);

describe('whether a member can be read', () => {
  it.each<[Partial<LegibilityMeasures>, string, string[]]>([
    [{}, 'clear', []],
    [{ acrossPx: 27.9 }, 'weak', ['too-small']],
    [{ acrossPx: 11.9 }, 'unreadable', ['too-small']],
    [{ fineBlur: 0.021 }, 'weak', ['blurred']],
    [{ fineBlur: 1, coarseBlur: 0.09 }, 'unreadable', ['blurred']],
    [{ middle: 29 }, 'weak', ['too-dark']],
    [{ middle: 0, shadows: 1 }, 'unreadable', ['too-dark']],
    [{ highlights: 0.6 }, 'weak', ['too-bright']],
    [{ highlights: 1 }, 'unreadable', ['too-bright']],
    [{ acrossPx: 20, middle: 3, fineBlur: 0.05 }, 'unreadable', ['too-dark', 'too-small', 'blurred']],
  ])('%j is %s: %j', (worse, verdict, reasons) => expect(judge(worse)).toEqual({ verdict, reasons }));

  // exp(-2 π² s² / p²): half of the contrast of a period of 1/8 at s = 0.0234, a tenth of one of 1/4 at 0.0854.
  it('has its limits where a Gaussian leaves half and a tenth of the contrast', () => {
    const blurThatLeaves = (share: number, period: number) =>
      period * Math.sqrt(-Math.log(share) / (2 * Math.PI ** 2));
    expect(blurThatLeaves(0.5, 1 / 8)).toBeCloseTo(0.0234, 4);
    expect(blurThatLeaves(0.1, 1 / 4)).toBeCloseTo(0.0854, 4);
  });

  it('never gets better when anything gets worse', () =>
    fc.assert(
      fc.property(
        fc.record({
          acrossPx: fc.double({ min: 0.1, max: 300, noNaN: true }),
          fineBlur: fc.double({ min: 0, max: 1, noNaN: true }),
          coarseBlur: fc.double({ min: 0, max: 1, noNaN: true }),
          middle: fc.integer({ min: 0, max: 255 }),
          shadows: fc.double({ min: 0, max: 1, noNaN: true }),
          highlights: fc.double({ min: 0, max: 1, noNaN: true }),
        }),
        fc.double({ min: 0, max: 1, noNaN: true }),
        (m, by) => {
          for (const worse of [
            { acrossPx: m.acrossPx * by },
            { fineBlur: m.fineBlur + by },
            { coarseBlur: m.coarseBlur + by },
            { middle: m.middle * by },
            { shadows: m.shadows + by },
            { highlights: m.highlights + by },
          ])
            expect(rank({ ...m, ...worse })).toBeGreaterThanOrEqual(rank(m));
        },
      ),
    ));

  it('can be said by size alone', () =>
    expect([9, 12, 27.9, 28, 500].map(sizeVerdict)).toEqual([
      'unreadable',
      'weak',
      'weak',
      'clear',
      'clear',
    ]));

  it('tells how many details fit across', () => {
    expect(sharpnessOf({ ...GOOD, fineBlur: 0, coarseBlur: 0 })).toBe(71);
    expect(sharpnessOf({ ...GOOD, fineBlur: 0.1, coarseBlur: 0.1 })).toBe(10);
    expect(sharpnessOf({ ...GOOD, fineBlur: 1, coarseBlur: 1 })).toBe(0);
  });
});
