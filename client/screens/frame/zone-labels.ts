import { boxAround } from '#domain/frame/drawing/flat';
import type { Sheet } from '#domain/frame/drawing/sheet';

export interface ZoneLabel {
  readonly covering: string;
  readonly text: string;
  readonly u: number;
  readonly v: number;
}

const LETTER_PX = 7;
const KANJI_PX = 13;
const LINE_PX = 18;

/** How wide a text is about, in pixels: kanji and kana are twice as wide as letters. */
export function widthOf(text: string): number {
  return Array.from(text).reduce(
    (sum, char) => sum + ((char.codePointAt(0) ?? 0) > 0x2e7f ? KANJI_PX : LETTER_PX),
    0,
  );
}

/** Names of zones within their upper left corners, one below the other where they would lie over each other. */
export function zoneLabels(
  zones: Sheet['zones'],
  textOf: (covering: string) => string,
  unit: number,
): ZoneLabel[] {
  const placed: (ZoneLabel & { width: number })[] = [];
  for (const { covering, corners } of zones) {
    const box = boxAround(corners);
    if (!box) continue;
    const text = shortened(textOf(covering), (box.right - box.left) / unit - 8);
    const label = {
      covering,
      text,
      u: box.left + 5 * unit,
      v: box.top + 16 * unit,
      width: widthOf(text) * unit,
    };
    while (placed.some((other) => isOver(label, other, unit))) label.v += LINE_PX * unit;
    if (text !== '') placed.push(label);
  }
  return placed;
}

function isOver(a: ZoneLabel & { width: number }, b: ZoneLabel & { width: number }, unit: number): boolean {
  return Math.abs(a.v - b.v) < LINE_PX * unit && a.u < b.u + b.width && b.u < a.u + a.width;
}

function shortened(text: string, room: number): string {
  if (widthOf(text) <= room) return text;
  const kept = Array.from(text);
  while (kept.length > 0 && widthOf(kept.join('')) + KANJI_PX > room) kept.pop();
  return kept.length < 2 ? '' : `${kept.join('')}…`;
}
