/**
 * Where each photo stands on the wall, by arithmetic alone: tiles of one size in rows, days below each
 * other. How many photos each day has is enough, so the scrollbar is right before any photo is known.
 */

/** A photo by its place: `day` null for those without a date. Within a day, so that other days may grow. */
export interface Slot {
  readonly day: string | null;
  readonly position: number;
}

export interface DayCount {
  readonly day: string | null;
  readonly photos: number;
}

/** Pixels, but `columns`. A row is a tile with the gap below it. */
export interface WallShape {
  readonly columns: number;
  readonly tileWidth: number;
  readonly tileHeight: number;
  readonly gap: number;
  /** What stands above the tiles of a day, and of those without a date. */
  readonly head: number;
  readonly undatedHead: number;
}

export interface WallDay extends DayCount {
  readonly top: number;
  readonly height: number;
  readonly head: number;
}

export interface WallLayout {
  readonly shape: WallShape;
  readonly days: readonly WallDay[];
  readonly height: number;
}

/** Whole columns of at least `least`, as wide as they fit; pictures of 4 : 3, as most cameras take them, and words below. */
export function tilesFor(
  width: number,
  least: number,
  gap: number,
  words: number,
): Pick<WallShape, 'columns' | 'tileWidth' | 'tileHeight'> {
  const columns = Math.max(1, Math.floor((width + gap) / (least + gap)));
  const tileWidth = Math.max(1, (width - gap * (columns - 1)) / columns);
  return { columns, tileWidth, tileHeight: Math.round(tileWidth * 0.75 + words) };
}

export function layOut(counts: readonly DayCount[], shape: WallShape): WallLayout {
  const row = shape.tileHeight + shape.gap;
  let top = 0;
  const days = counts
    .filter(({ photos }) => photos > 0)
    .map((count) => {
      const head = count.day === null ? shape.undatedHead : shape.head;
      const height = head + Math.ceil(count.photos / shape.columns) * row + shape.gap;
      const day = { ...count, top, height, head };
      top += height;
      return day;
    });
  return { shape, days, height: top };
}

/** The days of which some part lies between two heights. */
export function daysBetween({ days }: WallLayout, from: number, to: number): readonly WallDay[] {
  const first = firstEndingAfter(days, from);
  let end = first;
  while ((days[end]?.top ?? Infinity) < to) end += 1;
  return days.slice(first, end);
}

/** By halves: a house of years has a thousand days. */
function firstEndingAfter(days: readonly WallDay[], height: number): number {
  let [low, high] = [0, days.length];
  while (low < high) {
    const middle = (low + high) >> 1;
    const day = days[middle];
    if (day && day.top + day.height <= height) low = middle + 1;
    else high = middle;
  }
  return low;
}

/** Positions [first, end) of the photos of a day between two heights of the wall, in whole rows. */
export function positionsBetween(
  { shape }: WallLayout,
  day: WallDay,
  from: number,
  to: number,
): { first: number; end: number } {
  const row = shape.tileHeight + shape.gap;
  const start = day.top + day.head;
  const first = Math.max(0, Math.floor((from - start) / row)) * shape.columns;
  const end = Math.max(0, Math.ceil((to - start) / row)) * shape.columns;
  return { first: Math.min(first, day.photos), end: Math.min(end, day.photos) };
}

/** Left and top of a tile within its day, below the head. */
export function tileAt(shape: WallShape, position: number): { left: number; top: number } {
  return {
    left: (position % shape.columns) * (shape.tileWidth + shape.gap),
    top: Math.floor(position / shape.columns) * (shape.tileHeight + shape.gap),
  };
}

/** The height at which a tile begins; null where there is no such day. */
export function topOf(layout: WallLayout, { day, position }: Slot): number | null {
  const found = layout.days.find((one) => one.day === day);
  return found ? found.top + found.head + tileAt(layout.shape, position).top : null;
}

/** The first tile whose row ends below this height; null past the last. */
export function slotAt(layout: WallLayout, height: number): Slot | null {
  for (const day of daysBetween(layout, height, Infinity)) {
    const { first } = positionsBetween(layout, day, height, Infinity);
    if (first < day.photos) return { day: day.day, position: first };
  }
  return null;
}

export type ArrowKey = 'ArrowLeft' | 'ArrowRight' | 'ArrowUp' | 'ArrowDown';

/** The tile beside, above or below; up and down keep the column as far as the other row has it. */
export function stepFrom(layout: WallLayout, { day, position }: Slot, key: ArrowKey): Slot | null {
  const { columns } = layout.shape;
  const at = layout.days.findIndex((one) => one.day === day);
  const here = layout.days[at];
  if (!here) return null;
  const column = position % columns;
  const lastRow = Math.floor((here.photos - 1) / columns);
  const isForth = key === 'ArrowRight' || key === 'ArrowDown';
  const isAcross = key === 'ArrowLeft' || key === 'ArrowRight';
  const to = position + (isForth ? 1 : -1) * (isAcross ? 1 : columns);
  if (to >= 0 && to < here.photos) return { day, position: to };
  // A short last row below: its last tile, before the next day.
  if (key === 'ArrowDown' && Math.floor(position / columns) < lastRow)
    return { day, position: here.photos - 1 };
  const other = layout.days[at + (isForth ? 1 : -1)];
  if (!other) return null;
  if (isAcross) return { day: other.day, position: isForth ? 0 : other.photos - 1 };
  const rowStart = isForth ? 0 : Math.floor((other.photos - 1) / columns) * columns;
  return { day: other.day, position: Math.min(rowStart + column, other.photos - 1) };
}
