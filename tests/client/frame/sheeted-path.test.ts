import { describe, expect, test } from 'vitest';
import { sheetedOn } from '../../../client/screens/frame/frame-model.ts';
import { sheetedPath } from '../../../client/screens/frame/sheeted-path.ts';
import { BAY } from '../../support/some-grid.ts';
import { someFrame } from './some-frame.ts';

const UNIT = 10;
const sheets = (facts: object = {}) => ({
  ...{ id: 's', name: 'Sheets', laidDay: '2026-04-04', liftedDay: '2026-04-06' },
  hides: [{ mark: 'い貫', stretch: { from: BAY, to: 2 * BAY } }],
  ...facts,
});
const model = (...protections: object[]) => someFrame([], [], protections);

describe('what lies under protection', () => {
  test.each([
    ['2026-04-03', 0],
    ['2026-04-04', 1],
    ['2026-04-05', 1],
    // It was lifted in the course of that day.
    ['2026-04-06', 0],
  ])('on %s: %i', (day, count) => expect(sheetedOn(model(sheets()), 'い貫', day)).toHaveLength(count));
  test('lies on while nobody has lifted it', () =>
    expect(sheetedOn(model(sheets({ liftedDay: null })), 'い貫', '2026-05-01')).toHaveLength(1));
  test('changes the drawing on the days of laying and lifting', () =>
    expect(model(sheets()).days).toEqual(['2026-04-02', '2026-04-04', '2026-04-06', '2026-04-10']));
});

describe('the fold that is drawn', () => {
  const sheetOf = (one: ReturnType<typeof model>, label: string) => {
    const found = one.sheets.find(
      ({ subject }) => subject.kind === 'elevation' && subject.line.label === label,
    );
    if (!found) throw new Error(label);
    return found;
  };
  const ends = (path: string) =>
    [...path.matchAll(/[ML](-?\d+) (-?\d+)/g)].map(([, u, v]) => [Number(u), Number(v)]);
  const path = (one: ReturnType<typeof model>, label: string, day = '2026-04-05') =>
    sheetedPath(sheetOf(one, label), one, day, UNIT);

  test('runs along the part that lies under it, and to both sides of the member', () => {
    const one = model(sheets());
    const points = ends(path(one, 'い'));
    const rail = sheetOf(one, 'い').members.find(({ mark }) => mark === 'い貫');
    const at = (mm: number) => rail!.from.u + ((rail!.to.u - rail!.from.u) * mm) / (3 * BAY);
    const across = points.map(([u]) => u!);
    expect(Math.min(...across)).toBeCloseTo(Math.min(at(BAY), at(2 * BAY)), 0);
    expect(Math.max(...across)).toBeCloseTo(Math.max(at(BAY), at(2 * BAY)), 0);
    expect(new Set(points.map(([, v]) => Math.sign(v! - rail!.from.v)))).toEqual(new Set([-1, 1]));
  });
  test('stands where a member only goes through the sheet, if that part lies under it', () => {
    expect(path(model(sheets()), '三')).not.toBe('');
    const first = sheets({ hides: [{ mark: 'い貫', stretch: { from: 0, to: BAY } }] });
    expect(path(model(first), '三')).toBe('');
  });
  test('is not there on other days, nor over other members', () => {
    expect(path(model(sheets()), 'い', '2026-04-03')).toBe('');
    expect(path(model(sheets({ hides: [{ mark: '無', stretch: null }] })), 'い')).toBe('');
  });
  test('is never finer than a fold that can be seen, however near', () => {
    const one = model(sheets());
    expect(ends(sheetedPath(sheetOf(one, 'い'), one, '2026-04-05', 0.001)).length).toBeLessThan(500);
  });
});
