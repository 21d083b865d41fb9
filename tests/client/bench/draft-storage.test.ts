import { describe, expect, test } from 'vitest';
import { keepBegun, parseBegun, readBegun, type Begun } from '../../../client/screens/bench/draft-storage.ts';
import { memoryStorage } from '../memory-storage.ts';

const begun: Begun = {
  work: {
    draft: { region: { shape: 'rectangle', x: 0.1, y: 0.1, w: 0.2, h: 0.2 }, replaces: null },
    corners: [],
    waiting: [],
  },
  mark: 'い三',
  stage: 'pegged',
  note: '',
};

describe('what was begun at a photo', () => {
  test('comes back for that photo alone, until it is placed', () => {
    const storage = memoryStorage();
    keepBegun(storage, 'photo-1', begun);
    expect(readBegun(storage, 'photo-1')).toEqual(begun);
    expect(readBegun(storage, 'photo-2')).toBeNull();
    keepBegun(storage, 'photo-1', null);
    expect(readBegun(storage, 'photo-1')).toBeNull();
  });
  test('a storage that is full or forbidden does not stop the work', () => {
    const full = {
      ...memoryStorage(),
      setItem: () => {
        throw new Error('full');
      },
    };
    expect(() => keepBegun(full, 'photo-1', begun)).not.toThrow();
    expect(readBegun(null, 'photo-1')).toBeNull();
  });
  test.each([
    ['another shape', { work: 7 }],
    [
      'a region outside of the image',
      {
        ...begun,
        work: {
          corners: [],
          draft: { region: { shape: 'rectangle', x: 0.9, y: 0, w: 0.2, h: 0.1 }, replaces: null },
        },
      },
    ],
    [
      'a polygon of two corners',
      {
        ...begun,
        work: {
          corners: [],
          draft: {
            region: {
              shape: 'polygon',
              points: [
                [0, 0],
                [1, 1],
              ],
            },
            replaces: null,
          },
        },
      },
    ],
    ['corners that are none', { ...begun, work: { draft: null, corners: [[2, 0]] } }],
  ])('%s is not believed', (_, value) => expect(parseBegun(value)).toBeNull());
  test('a stage that does not exist is left open', () =>
    expect(parseBegun({ ...begun, stage: 'painted' })?.stage).toBeNull());
});
