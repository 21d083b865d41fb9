import { expect, test } from 'vitest';
import type { Convex } from '#domain/frame/clip';
import { zoneBody } from '#domain/frame/zone-body';
import { footingOf } from '#domain/record/footing';
import { standingPlaces } from '#domain/record/standing-places';
import { BAY, someGrid, someReader } from '../../support/some-grid.ts';

const places = standingPlaces(someReader);
const floor = (bottom: number, top: number): Convex => {
  const read = zoneBody({ shape: 'flat', corners: ['い一', 'は三'], bottom, top }, someReader);
  if (!read.ok) throw new Error(read.problem.reason);
  return read.body;
};
const footings = (level: string, floors: readonly Convex[]) =>
  places
    .filter((place) => place.level === level)
    .map((place) => [place.eye, footingOf(place, floors, someReader.grid)] as const);

test('the lowest level is ground, whatever is on record of it', () =>
  expect(new Set(footings('1F', []).map(([, footing]) => footing))).toEqual(new Set(['ground'])));

test('above, a floor is where one has closed, at about that level and under one’s feet', () => {
  for (const [{ x, y }, footing] of footings('2F', [floor(3100, 3250)]))
    expect(footing).toBe(x > 0 && y > 0 && x < 2 * BAY && y < 2 * BAY ? 'floor' : 'none');
  expect(new Set(footings('2F', [floor(400, 450)]).map(([, footing]) => footing))).toEqual(new Set(['none']));
  expect(new Set(footings('軒', [floor(3100, 3250)]).map(([, footing]) => footing))).toEqual(
    new Set(['none']),
  );
});

test('a house without levels has ground alone', () => {
  const [place] = places;
  if (!place) throw new Error('There is no place.');
  expect(footingOf({ ...place, level: null }, [], { ...someGrid(), levels: [] })).toBe('ground');
});
