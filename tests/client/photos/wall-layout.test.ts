import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  layOut,
  slotAt,
  stepFrom,
  tileAt,
  tilesFor,
  topOf,
  type ArrowKey,
  type Slot,
  type WallLayout,
} from '../../../client/screens/photos/wall-layout.ts';
import { PAGE, pagesOf } from '../../../client/screens/photos/wall-pages.ts';
import { drawnParts, positionsOf } from '../../../client/screens/photos/wall-parts.ts';

const shape = { ...tilesFor(400, 90, 10, 20), gap: 10, head: 40, undatedHead: 95 };
const wallOf = (...photos: number[]): WallLayout =>
  layOut(
    photos.map((n, i) => ({ day: i === photos.length - 1 ? null : `2026-04-${30 - i}`, photos: n })),
    shape,
  );
const randomWall = fc
  .array(fc.integer({ min: 0, max: 30 }), { minLength: 2, maxLength: 12 })
  .map((photos) => wallOf(...photos))
  .filter(({ days }) => days.length > 0);

/** Every tile with where it stands on the wall, by walking through all of them. */
function allTiles({ days, shape }: WallLayout) {
  return days.flatMap(({ day, photos, top, head }) =>
    Array.from({ length: photos }, (_, position) => {
      const tile = tileAt(shape, position);
      return { day, position, left: tile.left, top: top + head + tile.top };
    }),
  );
}

describe('tiles', () => {
  test('fill the width in whole columns that are never narrower than they may be', () =>
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 3000 }), fc.integer({ min: 40, max: 300 }), (width, least) => {
        const { columns, tileWidth } = tilesFor(width, least, 8, 20);
        expect(columns * tileWidth + (columns - 1) * 8).toBeCloseTo(Math.max(width, 1), 6);
        if (columns > 1) expect(tileWidth).toBeGreaterThanOrEqual(least);
        expect((width + 8) / (columns + 1) - 8).toBeLessThan(least);
      }),
    ));
  test('stand apart and within the height of the wall, those of a later part below', () =>
    fc.assert(
      fc.property(randomWall, (wall) => {
        const tiles = allTiles(wall);
        const places = tiles.map(({ left, top }) => `${left} ${top}`);
        expect(new Set(places).size).toBe(tiles.length);
        const last = Math.max(...tiles.map(({ top }) => top));
        expect(last + shape.tileHeight).toBeLessThanOrEqual(wall.height);
        expect(tiles.map(({ top }) => top)).toEqual(tiles.map(({ top }) => top).sort((a, b) => a - b));
        for (const tile of tiles) expect(topOf(wall, tile)).toBe(tile.top);
      }),
    ));
});

describe('what is drawn', () => {
  test('is every tile that reaches into the view and none that is a row away from it', () =>
    fc.assert(
      fc.property(randomWall, fc.nat(3000), fc.integer({ min: 1, max: 900 }), (wall, from, height) => {
        const to = from + height;
        const drawn = new Set(
          drawnParts(wall, { from, to }, null).flatMap((part) =>
            positionsOf(part).map((position) => `${part.day} ${position}`),
          ),
        );
        const row = shape.tileHeight + shape.gap;
        for (const { day, position, top } of allTiles(wall)) {
          const isDrawn = drawn.has(`${day} ${position}`);
          if (top + shape.tileHeight > from && top < to) expect(isDrawn, `${day} ${position}`).toBe(true);
          if (top + row < from - row || top > to + row) expect(isDrawn, `${day} ${position}`).toBe(false);
        }
      }),
    ));
  test('has the tile with the focus once, wherever it is, in the order of the wall', () =>
    fc.assert(
      fc.property(randomWall, fc.nat(), fc.nat(3000), (wall, pick, from) => {
        const tiles = allTiles(wall);
        const held = tiles[pick % tiles.length] as Slot;
        const drawn = drawnParts(wall, { from, to: from + 300 }, held).flatMap((part) =>
          positionsOf(part).map((position) => ({ day: part.day, position })),
        );
        expect(drawn.filter((t) => t.day === held.day && t.position === held.position)).toHaveLength(1);
        const order = tiles.map(({ day, position }) => `${day} ${position}`);
        const at = drawn.map(({ day, position }) => order.indexOf(`${day} ${position}`));
        expect(at).toEqual(at.toSorted((a, b) => a - b));
      }),
    ));
  test('asks for the pages that hold it and for no others', () => {
    const parts = [
      { day: '2026-04-30', first: 0, end: 1, besides: 0 },
      { day: '2026-04-29', first: PAGE - 1, end: PAGE + 1, besides: null },
      { day: '2026-04-28', first: 3, end: 3, besides: null },
      { day: '2026-04-27', first: 3, end: 3, besides: 2 * PAGE },
      { day: null, first: PAGE, end: 2 * PAGE, besides: null },
    ];
    expect(pagesOf(parts).map(({ day, page }) => [day, page])).toEqual([
      ['2026-04-30', 0],
      ['2026-04-29', 0],
      ['2026-04-29', 1],
      ['2026-04-27', 2],
      [null, 1],
    ]);
  });
});

test('the first tile in sight is the first whose row ends below the edge', () =>
  fc.assert(
    fc.property(randomWall, fc.nat(3000), (wall, height) => {
      const row = shape.tileHeight + shape.gap;
      const expected = allTiles(wall).find(({ top }) => top + row > height);
      expect(slotAt(wall, height)).toEqual(
        expected ? { day: expected.day, position: expected.position } : null,
      );
    }),
  ));

describe('arrows', () => {
  const wall = wallOf(6, 0, 2, 5);
  const go = (day: string | null, position: number, key: ArrowKey) => {
    const to = stepFrom(wall, { day, position }, key);
    return to && [to.day, to.position];
  };
  // Four columns: 0 1 2 3 / 4 5 on the 30th, 0 1 on the 28th, 0 1 2 3 / 4 without a date.
  test('go along the row and on into the next day', () => {
    expect(shape.columns).toBe(4);
    expect(go('2026-04-30', 0, 'ArrowRight')).toEqual(['2026-04-30', 1]);
    expect(go('2026-04-30', 5, 'ArrowRight')).toEqual(['2026-04-28', 0]);
    expect(go(null, 0, 'ArrowLeft')).toEqual(['2026-04-28', 1]);
  });
  test('keep the column upwards and downwards as far as the other row has it', () => {
    expect(go('2026-04-30', 1, 'ArrowDown')).toEqual(['2026-04-30', 5]);
    expect(go('2026-04-30', 3, 'ArrowDown')).toEqual(['2026-04-30', 5]);
    expect(go('2026-04-30', 5, 'ArrowDown')).toEqual(['2026-04-28', 1]);
    expect(go('2026-04-28', 1, 'ArrowDown')).toEqual([null, 1]);
    expect(go(null, 3, 'ArrowUp')).toEqual(['2026-04-28', 1]);
    expect(go('2026-04-28', 0, 'ArrowUp')).toEqual(['2026-04-30', 4]);
  });
  test('stop at both ends', () => {
    expect(go('2026-04-30', 0, 'ArrowLeft')).toBeNull();
    expect(go('2026-04-30', 2, 'ArrowUp')).toBeNull();
    expect(go(null, 4, 'ArrowRight')).toBeNull();
    expect(go(null, 4, 'ArrowDown')).toBeNull();
  });
  test('to the right reach every photo once, from the first to the last', () =>
    fc.assert(
      fc.property(randomWall, (any) => {
        const tiles = allTiles(any).map(({ day, position }) => ({ day, position }));
        const walked: Slot[] = [];
        for (let at: Slot | null = tiles[0] ?? null; at; at = stepFrom(any, at, 'ArrowRight'))
          walked.push(at);
        expect(walked).toEqual(tiles);
      }),
    ));
});
