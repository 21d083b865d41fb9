import { expect, it } from 'vitest';
import { isOfNow, keepWalk, readWalk } from '../../../client/screens/shots/kept-walk.ts';
import { someGrid } from '../../support/some-grid.ts';
import { memoryStorage } from '../memory-storage.ts';
import { shot, walkOf } from './some-walk.ts';

const walk = walkOf([shot('rail', [[0, 1820]])]);

it('keeps a walk of each house and each number of days', () => {
  const storage = memoryStorage();
  keepWalk(storage, 'a', 7, walk);
  expect(readWalk(storage, 'a', 7)).toEqual(walk);
  expect(readWalk(storage, 'a', 'all')).toBeNull();
  expect(readWalk(storage, 'b', 7)).toBeNull();
});

it('does without a storage, and reads nothing that is no walk', () => {
  expect(() => keepWalk(null, 'a', 7, walk)).not.toThrow();
  expect(readWalk(null, 'a', 7)).toBeNull();
  for (const text of ['{', 'null', '[]', '{"today":"2026-05-01"}', '{"today":1,"places":[]}']) {
    const storage = memoryStorage();
    storage.setItem('arakabe.walk.2.a.7', text);
    expect(readWalk(storage, 'a', 7), text).toBeNull();
  }
});

it('lets go of a walk on the next day, and where the lines have moved', () => {
  expect(isOfNow(walk, { ...walk, asOf: '2026-05-01T08:00:00.000Z', places: [] })).toBe(true);
  expect(isOfNow(walk, { ...walk, today: '2026-05-02' })).toBe(false);
  expect(isOfNow(walk, { ...walk, grid: someGrid(1818) })).toBe(false);
  expect(isOfNow(walk, { ...walk, grid: null })).toBe(false);
});
