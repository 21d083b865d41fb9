import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { gridReader } from '#domain/frame/grid-reader';
import { bayPieces, SHORTEST_PIECE_MM } from '#domain/record/bay-pieces';
import { standingPlaces } from '#domain/record/standing-places';
import { axisBetween, BAY, someGrid, someReader } from '../../support/some-grid.ts';

describe('standing places', () => {
  const places = standingPlaces(someReader);
  it('are each bay and both sides of each wall bay, on each level', () =>
    // 25 bays; 6 lines of 5 bays in each family, both sides.
    expect(places).toHaveLength(3 * (25 + 2 * (6 * 5) * 2)));
  it('are where they say they are', () => {
    expect(places[0]).toEqual({
      eye: { x: BAY / 2, y: BAY / 2, z: 450 + 1500 },
      level: '1F',
      between: ['い一', 'ろ二'],
      before: null,
    });
    const outer = places.filter(({ before }) => before?.outside);
    expect(outer).toHaveLength(3 * 4 * 5);
    expect(outer[0]).toEqual({
      eye: { x: -1000, y: BAY / 2, z: 1950 },
      level: '1F',
      between: ['い一', 'い二'],
      before: { family: 'first', line: 'い', side: 'lower', outside: true },
    });
    expect(outer.at(-1)).toEqual({
      eye: { x: 4.5 * BAY, y: 5 * BAY + 1000, z: 7500 },
      level: '軒',
      between: ['ほ六', 'へ六'],
      before: { family: 'second', line: '六', side: 'higher', outside: true },
    });
  });
  it('name crossings that read back, with the eye between them', () => {
    for (const { eye, between, before } of places) {
      const [a, b] = between.map((mark) => someReader.crossing(mark));
      if (!a?.ok || !b?.ok) throw new Error(between.join());
      if (before?.family !== 'first') expect(eye.x).toBe((a.value.x + b.value.x) / 2);
      if (before?.family !== 'second') expect(eye.y).toBe((a.value.y + b.value.y) / 2);
    }
  });
  it('stand on the datum where there are no levels, and beside a single line', () => {
    const bare = standingPlaces(gridReader({ ...someGrid(), levels: [] }));
    expect([bare.length, bare[0]?.level, bare[0]?.eye.z]).toEqual([85 + 60, null, 1500 - 0]);
    const grid = someGrid();
    const single = { ...grid, first: { ...grid.first, lines: grid.first.lines.slice(0, 1) } };
    expect(standingPlaces(gridReader(single))).toHaveLength(3 * 5 * 2);
  });
});

describe('pieces of a stretch', () => {
  const grid = someGrid();
  const rail = axisBetween([0, -300, 900], [0, 5 * BAY + 300, 900]);
  it('are its bays; what reaches over the outermost line stays with its bay', () =>
    expect(bayPieces(rail, { from: 0, to: rail.length }, grid).map(({ to }) => to)).toEqual([
      300 + BAY,
      300 + 2 * BAY,
      300 + 3 * BAY,
      300 + 4 * BAY,
      600 + 5 * BAY,
    ]));
  it('of a post are its storeys', () =>
    expect(bayPieces(axisBetween([0, 0, 450], [0, 0, 6000]), { from: 0, to: 5550 }, grid)).toEqual([
      { from: 0, to: 2800 },
      { from: 2800, to: 5550 },
    ]));
  it('join without overlap, none too short to be worth a picture', () => {
    const coordinate = fc.integer({ min: -500, max: 9600 });
    const point = fc.tuple(coordinate, coordinate, fc.integer({ min: 0, max: 7000 }));
    fc.assert(
      fc.property(
        point,
        point,
        fc.nat(100),
        fc.nat(100),
        fc.constantFrom(303, 910, BAY),
        (a, b, x, y, bay) => {
          fc.pre(Math.hypot(a[0] - b[0], a[1] - b[1], a[2] - b[2]) > 100 && x !== y);
          const axis = axisBetween(a, b);
          const [from, to] = [(Math.min(x, y) * axis.length) / 100, (Math.max(x, y) * axis.length) / 100];
          const pieces = bayPieces(axis, { from, to }, someGrid(bay));
          expect([pieces[0]?.from, pieces.at(-1)?.to]).toEqual([from, to]);
          for (const [i, piece] of pieces.entries()) {
            if (i > 0) expect(piece.from).toBe(pieces[i - 1]?.to);
            if (pieces.length > 1) expect(piece.to - piece.from).toBeGreaterThanOrEqual(SHORTEST_PIECE_MM);
          }
        },
      ),
    );
  });
});
