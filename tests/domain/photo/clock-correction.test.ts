import { describe, expect, it } from 'vitest';
import { correctClock, isSetBetween, type ClockMark } from '#domain/photo/clock-correction';

const DAY = 86_400_000;
const HOUR = 3_600_000;
const START = Date.UTC(2026, 3, 1);
const mark = (id: string, day: number, deltaS: number, withinS = 5): ClockMark => ({
  id,
  clockMs: START + day * DAY,
  deltaMs: deltaS * 1000,
  withinS,
});

/** Figures worked out by hand: no table of how clocks drift is published for cameras. */
describe('correctClock', () => {
  it('says nothing without a mark', () => {
    expect(correctClock(START, [])).toBeNull();
  });

  it('moves everything by the only mark, less surely the further away: 2 s a day', () => {
    const only = [mark('a', 0, -2232)];
    expect(correctClock(START, only)).toEqual({
      deltaMs: -2_232_000,
      uncertaintyS: 5,
      basis: 'one-mark',
      marks: ['a'],
      isSetBetween: false,
    });
    expect(correctClock(START + 10 * DAY, only)).toMatchObject({ deltaMs: -2_232_000, uncertaintyS: 25 });
    expect(correctClock(START - 10 * DAY, only)).toMatchObject({ deltaMs: -2_232_000, uncertaintyS: 25 });
  });

  it('divides the drift evenly between two marks', () => {
    const marks = [mark('b', 10, 120, 30), mark('a', 0, 100, 5)];
    const at = (day: number) => correctClock(START + day * DAY, marks);
    // 20 s in 10 days: 2 s a day, and 7.25 days make 14.5 s.
    expect(at(7.25)).toEqual({
      deltaMs: 114_500,
      uncertaintyS: 30,
      basis: 'between-marks',
      marks: ['a', 'b'],
      isSetBetween: false,
    });
    expect(at(0)).toMatchObject({ deltaMs: 100_000, uncertaintyS: 5, marks: ['a'] });
    expect(at(10)).toMatchObject({ deltaMs: 120_000, uncertaintyS: 30, marks: ['b'] });
    expect(at(-3)).toMatchObject({ deltaMs: 100_000, uncertaintyS: 11, basis: 'before-first-mark' });
    expect(at(12)).toMatchObject({ deltaMs: 120_000, uncertaintyS: 34, basis: 'after-last-mark' });
  });

  it('believes the nearer of two marks between which the clock was set', () => {
    const marks = [mark('a', 0, -2232), mark('b', 4, 3)];
    const at = (ms: number) => correctClock(START + ms, marks);
    expect(at(HOUR)).toEqual({
      deltaMs: -2_232_000,
      uncertaintyS: 2235,
      basis: 'between-marks',
      marks: ['a'],
      isSetBetween: true,
    });
    expect(at(3 * DAY)).toMatchObject({ deltaMs: 3000, uncertaintyS: 2235, marks: ['b'] });
    expect(at(2 * DAY)).toMatchObject({ marks: ['a'] });
    expect(at(2 * DAY + 1)).toMatchObject({ marks: ['b'] });
    // At a mark and beyond it nothing is in question.
    expect(at(0)).toMatchObject({ uncertaintyS: 5, isSetBetween: false });
    expect(at(5 * DAY)).toMatchObject({ deltaMs: 3000, uncertaintyS: 7, isSetBetween: false });
  });

  it('takes a clock for set where it moved by more than 60 s and 60 s a day', () => {
    expect(isSetBetween(mark('a', 0, 0), mark('b', 2, 180))).toBe(false);
    expect(isSetBetween(mark('a', 0, 0), mark('b', 2, 180.001))).toBe(true);
    expect(isSetBetween(mark('a', 0, 0), mark('b', 2, -180.001))).toBe(true);
  });

  it('of two marks at one reading believes the later said', () => {
    expect(correctClock(START, [mark('a', 0, 10), mark('b', 0, 20)])).toMatchObject({
      deltaMs: 20_000,
      marks: ['b'],
      basis: 'one-mark',
    });
  });
});
