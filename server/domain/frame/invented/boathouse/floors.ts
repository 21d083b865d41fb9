import type { InventedMember } from '../invented-house.ts';
import type { Lines } from './lines.ts';
import { HEIGHTS, SECTIONS, type BoathouseSize } from './measures.ts';
import { piecesOf } from './pieces.ts';

/** The ground floor as far as the slip, and the loft's over all of the house, where there is one. */
export function floorsOf(lines: Lines, { storeys }: BoathouseSize): InventedMember[] {
  return [...groundFloor(lines), ...(storeys === 2 ? loftFloor(lines) : [])];
}

/** Bearers at each half bay between the foot ties, on floor posts; joists across them. */
function groundFloor({ first, across, along, westmost, slip, lakeside, hillside }: Lines): InventedMember[] {
  const [bearer, post, joist] = [
    piecesOf('大引', 'bearer'),
    piecesOf('床束', 'bearer'),
    piecesOf('根太', 'joist'),
  ];
  const halves = across.filter((s) => s.startsWith('又'));
  const inner = first.slice(1, first.indexOf(slip));
  const foot = { base: HEIGHTS.foot, top: HEIGHTS.bearer - SECTIONS.bearer[1] / 2 };
  const place = '床下';
  return [
    ...halves.map((s) =>
      bearer(`${s}大引`, { from: westmost + s, to: slip + s, level: '1F', base: HEIGHTS.bearer, place }),
    ),
    ...halves.flatMap((s) =>
      inner.map((f) => post(`${f}${s}床束`, { from: f + s, level: '1F', ...foot, place })),
    ),
    ...along
      .slice(0, along.indexOf(slip) + 1)
      .map((f) =>
        joist(`${f}根太`, { from: f + lakeside, to: f + hillside, level: '1F', base: HEIGHTS.joist, place }),
      ),
  ];
}

/** At each half bay, along the house over its beams. */
function loftFloor({ across, westmost, eastmost }: Lines): InventedMember[] {
  const joist = piecesOf('根太', 'joist');
  return across.map((s) =>
    joist(`二階 ${s}根太`, {
      ...{ from: westmost + s, to: eastmost + s, level: '2F', base: HEIGHTS.joist, place: '二階' },
    }),
  );
}
