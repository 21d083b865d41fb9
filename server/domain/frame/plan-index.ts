import type { Box } from './box-of.ts';
import type { Triple } from './clip.ts';

/** No finer than a bay needs, and never more than this many cells either way. */
const CELL_MM = 1000;
const MOST_CELLS = 50;

/** Finds boxes by where they stand in plan. Lengths in mm. */
export interface PlanIndex {
  /**
   * The number of a box of which `is` holds, or -1. All boxes that come within `slack` of a line, along each
   * axis, are asked, each once and in no order; some that come a little less near may be.
   */
  find(a: Triple, b: Triple, slack: number, is: (number: number) => boolean): number;
}

export function planIndex(boxes: readonly Box[]): PlanIndex {
  const [left, lower] = [0, 1].map((i) => Math.min(...boxes.map(({ low }) => low[i] ?? 0))) as [
    number,
    number,
  ];
  const [right, upper] = [0, 1].map((i) => Math.max(...boxes.map(({ high }) => high[i] ?? 0))) as [
    number,
    number,
  ];
  const size = Math.max(CELL_MM, (right - left) / MOST_CELLS, (upper - lower) / MOST_CELLS);
  const column = (x: number) => Math.min(MOST_CELLS, Math.max(0, Math.floor((x - left) / size)));
  const row = (y: number) => Math.min(MOST_CELLS, Math.max(0, Math.floor((y - lower) / size)));
  const cells: number[][] = Array.from({ length: (MOST_CELLS + 1) ** 2 }, () => []);
  const cellAt = (x: number, y: number) => cells[x * (MOST_CELLS + 1) + y] as number[];
  for (const [number, { low, high }] of boxes.entries())
    for (let x = column(low[0]); x <= column(high[0]); x++)
      for (let y = row(low[1]); y <= row(high[1]); y++) cellAt(x, y).push(number);

  const bounds = new Float64Array(
    boxes.flatMap(({ low, high }) => [low[2], high[2], low[0], high[0], low[1], high[1]]),
  );
  const asked = new Uint32Array(boxes.length);
  let question = 0;
  return {
    find(a, b, slack, is) {
      question++;
      const reach: Reach = [
        Math.min(a[2], b[2]) - slack,
        Math.max(a[2], b[2]) + slack,
        Math.min(a[0], b[0]) - slack,
        Math.max(a[0], b[0]) + slack,
        Math.min(a[1], b[1]) - slack,
        Math.max(a[1], b[1]) + slack,
      ];
      const [from, to] = a[0] <= b[0] ? [a, b] : [b, a];
      const lean = to[0] - from[0] < 1e-9 ? Infinity : (to[1] - from[1]) / (to[0] - from[0]);
      const [firstColumn, lastColumn] = [column(from[0] - slack), column(to[0] + slack)];
      for (let x = firstColumn; x <= lastColumn; x++) {
        // Where the line passes this column of cells; the outermost cells hold all that lies beyond them.
        const begin = x === firstColumn ? from[0] : Math.max(from[0], left + x * size - slack);
        const end = x === lastColumn ? to[0] : Math.min(to[0], left + (x + 1) * size + slack);
        const y1 = lean === Infinity ? from[1] : from[1] + lean * (begin - from[0]);
        const y2 = lean === Infinity ? to[1] : from[1] + lean * (end - from[0]);
        const lastRow = row(Math.max(y1, y2) + slack);
        for (let y = row(Math.min(y1, y2) - slack); y <= lastRow; y++)
          for (const number of cellAt(x, y)) {
            if (asked[number] === question) continue;
            asked[number] = question;
            if (touches(bounds, number * 6, reach) && is(number)) return number;
          }
      }
      return -1;
    },
  };
}

/** Of the box about a line: low and high in height, along x, along y; heights tell most apart. */
type Reach = readonly [number, number, number, number, number, number];

function touches(bounds: Float64Array, at: number, [low, high, left, right, lower, upper]: Reach): boolean {
  return (
    (bounds[at] as number) <= high &&
    (bounds[at + 1] as number) >= low &&
    (bounds[at + 2] as number) <= right &&
    (bounds[at + 3] as number) >= left &&
    (bounds[at + 4] as number) <= upper &&
    (bounds[at + 5] as number) >= lower
  );
}
