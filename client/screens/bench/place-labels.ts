import type { Verdict } from '#domain/photo/legibility';
import { boundingBox, type Region } from '#domain/photo/region';

/** A label as wide and high as it is drawn, in CSS pixels. */
export interface LabelSize {
  readonly width: number;
  readonly height: number;
}

export interface Labelled {
  readonly id: string;
  readonly mark: string;
  readonly region: Region;
  /** What has a sign of its own on the label. */
  readonly legibility?: { readonly verdict: Verdict | null };
}

interface Box extends LabelSize {
  readonly x: number;
  readonly y: number;
}

/** The strokes of the stage, then the mark in letters of 13 px: kanji and kana are square, others about half. */
const SIGNS_WIDTH = 24;
const WIDE = 13;
const NARROW = 7.8;
const HEIGHT = 20;
const VERDICT_WIDTH = 16;

/** Only what is against a region is worth a sign among many labels. */
export function signedVerdict({
  legibility,
}: Pick<Labelled, 'legibility'>): Exclude<Verdict, 'clear'> | null {
  const verdict = legibility?.verdict ?? null;
  return verdict === 'clear' ? null : verdict;
}

export function labelSize(mark: string, hasVerdict = false): LabelSize {
  const letters = [...mark].map((sign) => (sign >= '\u2e80' ? WIDE : NARROW));
  return {
    width: letters.reduce((sum, width) => sum + width, SIGNS_WIDTH + (hasVerdict ? VERDICT_WIDTH : 0)),
    height: HEIGHT,
  };
}

/**
 * Where each label goes, in pixels from the top left corner of its region, so that none lies on another:
 * there if it is free, else at another corner, else further down. `width`: of the whole picture on the
 * screen. The order is that of the places, so that choosing a tag moves nothing.
 */
export function placeLabels(
  tags: readonly Labelled[],
  width: number,
  tallness: number,
): ReadonlyMap<string, readonly [number, number]> {
  const placed: Box[] = [];
  const offsets = new Map<string, readonly [number, number]>();
  for (const { id, mark, hasVerdict, box } of inReadingOrder(tags, width, tallness)) {
    const size = labelSize(mark, hasVerdict);
    const isFree = (at: Box) => !placed.some((other) => overlaps(at, other));
    // Whole at the edge of the picture, or its last sign would be cut off.
    const within = (x: number) => Math.min(Math.max(0, x), Math.max(0, width - size.width));
    const boxes = places(box, size, placed.length).map(([x, y]) => ({ x: within(x), y, ...size }));
    const label = boxes.find(isFree) ?? { x: within(box.x), y: box.y, ...size };
    placed.push(label);
    offsets.set(id, [label.x - box.x, label.y - box.y]);
  }
  return offsets;
}

function inReadingOrder(tags: readonly Labelled[], width: number, tallness: number) {
  return tags
    .map(({ id, mark, region, ...rest }) => {
      const { x, y, w, h } = boundingBox(region);
      const box: Box = {
        x: x * width,
        y: y * width * tallness,
        width: w * width,
        height: h * width * tallness,
      };
      return { id, mark, hasVerdict: signedVerdict(rest) !== null, box };
    })
    .sort((a, b) => a.box.y - b.box.y || a.box.x - b.box.x || (a.id < b.id ? -1 : 1));
}

/** The best first. With one row more than there are labels already, the last ones are always enough. */
function places(box: Box, { width, height }: LabelSize, others: number): [number, number][] {
  const bottom = box.y + box.height;
  const right = box.x + Math.max(0, box.width - width);
  const corners: [number, number][] = [
    [box.x, box.y],
    [right, box.y],
    [box.x, Math.max(box.y, bottom - height)],
    [right, Math.max(box.y, bottom - height)],
    [box.x, bottom],
    [box.x, box.y - height],
  ];
  const down = Array.from({ length: 2 * others + 1 }, (_, row): [number, number] => [
    box.x,
    box.y + (row + 1) * height,
  ]);
  return [...corners, ...down];
}

function overlaps(a: Box, b: Box): boolean {
  return a.x < b.x + b.width && b.x < a.x + a.width && a.y < b.y + b.height && b.y < a.y + a.height;
}
