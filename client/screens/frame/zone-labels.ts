import { boxAround, type Box } from '#domain/frame/drawing/flat';
import type { Sheet } from '#domain/frame/drawing/sheet';
import type { ZoneLook } from './zone-look.ts';

export interface ZoneLabel {
  readonly covering: string;
  readonly text: string;
  readonly u: number;
  readonly v: number;
  readonly width: number;
  readonly height: number;
}

const LETTER_PX = 7;
const KANJI_PX = 13;
const LINE_PX = 20;
const PADDING_PX = 5;

/** How wide a text is about, in pixels: kanji and kana are twice as wide as letters. */
export function widthOf(text: string): number {
  return Array.from(text).reduce(
    (sum, char) => sum + ((char.codePointAt(0) ?? 0) > 0x2e7f ? KANJI_PX : LETTER_PX),
    0,
  );
}

/** So much longer than wide, a wall in plan is written across, over its edges. */
const SLENDER = 4;

/**
 * Names in the middles of zones, the first ones first; one below or above the other where they would lie over each
 * other. None is cut by the edge of the window.
 */
export function zoneLabels(
  zones: Sheet['zones'],
  lookOf: (covering: string) => Pick<ZoneLook, 'name' | 'text'>,
  unit: number,
  seen: Box | null = null,
): ZoneLabel[] {
  const placed: ZoneLabel[] = [];
  const height = LINE_PX * unit;
  for (const { covering, corners } of zones) {
    const box = boxAround(corners);
    if (!box) continue;
    const [wide, high] = [box.right - box.left, box.bottom - box.top];
    const room = (high > SLENDER * wide ? high : wide) / unit - 2 * PADDING_PX;
    const { name, text: whole } = lookOf(covering);
    const text = widthOf(whole) <= room ? whole : shortened(name, room);
    const width = (widthOf(text) + 2 * PADDING_PX) * unit;
    const edges = seen && meet(box, seen) ? seen : null;
    const u = between((box.left + box.right - width) / 2, edges?.left, edges && edges.right - width);
    const middle = between((box.top + box.bottom - height) / 2, edges?.top, edges && edges.bottom - height);
    const rows = rowsAbout(middle, height, 2 * placed.length + 1).filter(
      (row) => !edges || (row >= edges.top && row + height <= edges.bottom),
    );
    const v = rows.find((row) => !placed.some((other) => isOver({ u, v: row, width, height }, other)));
    if (text !== '' && v !== undefined) placed.push({ covering, text, u, v, width, height });
  }
  return placed;
}

/** Where it is, then by turns a row farther down and up. */
function rowsAbout(middle: number, height: number, count: number): number[] {
  const away = Array.from({ length: count }, (_, i) => (i + 1) * height);
  return [middle, ...away.flatMap((by) => [middle + by, middle - by])];
}

const meet = (a: Box, b: Box) => a.left < b.right && b.left < a.right && a.top < b.bottom && b.top < a.bottom;

/** Where neither end is given, as it is. */
function between(at: number, least: number | undefined, most: number | null): number {
  return Math.max(least ?? at, Math.min(at, most ?? at));
}

type Place = Pick<ZoneLabel, 'u' | 'v' | 'width' | 'height'>;

function isOver(a: Place, b: Place): boolean {
  return Math.abs(a.v - b.v) < a.height * 0.999 && a.u < b.u + b.width && b.u < a.u + a.width;
}

function shortened(text: string, room: number): string {
  if (widthOf(text) <= room) return text;
  const kept = Array.from(text);
  while (kept.length > 0 && widthOf(kept.join('')) + KANJI_PX > room) kept.pop();
  return kept.length < 2 ? '' : `${kept.join('')}…`;
}
