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
 * Where each label goes, in pixels from the top left corner of its region's box, so that none lies on another and
 * each on what it names as long as there is room: at a corner of a box, else along the middle of the region, else
 * as near above or below that as it can be. `width`: of the whole picture on the screen. The order is that of the
 * places, so that choosing a tag moves nothing.
 */
export function placeLabels(
  tags: readonly Labelled[],
  width: number,
  tallness: number,
): ReadonlyMap<string, readonly [number, number]> {
  const placed: Box[] = [];
  const offsets = new Map<string, readonly [number, number]>();
  const height = width * tallness;
  for (const { id, mark, hasVerdict, box, points } of inReadingOrder(tags, width, height)) {
    const size = labelSize(mark, hasVerdict);
    const isFree = (at: Box) => !placed.some((other) => overlaps(at, other));
    // Whole at the edge of the picture, or its last sign would be cut off.
    const within = (at: number, room: number) => Math.min(Math.max(0, at), Math.max(0, room));
    const laid = ([x, y]: Px): Box => ({
      x: within(x, width - size.width),
      y: within(y, height - size.height),
      ...size,
    });
    const own = points
      ? along(points, box, size)
      : [...corners(box, size), ...along(cornersOf(box), box, size)];
    const label = firstFree(own, size.height, laid, isFree, placed.length);
    placed.push(label);
    offsets.set(id, [label.x - box.x, label.y - box.y]);
  }
  return offsets;
}

type Px = readonly [x: number, y: number];

function inReadingOrder(tags: readonly Labelled[], width: number, height: number) {
  return tags
    .map(({ id, mark, region, ...rest }) => {
      const { x, y, w, h } = boundingBox(region);
      const box: Box = { x: x * width, y: y * height, width: w * width, height: h * height };
      const points =
        region.shape === 'polygon' ? region.points.map(([px, py]): Px => [px * width, py * height]) : null;
      return { id, mark, hasVerdict: signedVerdict(rest) !== null, box, points };
    })
    .sort((a, b) => a.box.y - b.box.y || a.box.x - b.box.x || (a.id < b.id ? -1 : 1));
}

/** Of its own places the first that is free, else row by row the nearest above or below one of them. */
function firstFree(
  own: readonly Px[],
  row: number,
  laid: (at: Px) => Box,
  isFree: (at: Box) => boolean,
  others: number,
): Box {
  // Each of the others is in the way of two rows at most.
  for (let rows = 0; rows <= 2 * others + 1; rows += 1)
    for (const by of rows === 0 ? [0] : [-rows * row, rows * row]) {
      const free = own.map(([x, y]) => laid([x, y + by])).find(isFree);
      if (free) return free;
    }
  // More labels than the picture has room for.
  let below = laid(own[0] ?? [0, 0]);
  while (!isFree(below)) below = { ...below, y: below.y + row };
  return below;
}

/** Within a box and right below or above it. */
function corners(box: Box, { width, height }: LabelSize): Px[] {
  const bottom = Math.max(box.y, box.y + box.height - height);
  const right = box.x + Math.max(0, box.width - width);
  return [
    [box.x, box.y],
    [right, box.y],
    [box.x, bottom],
    [right, bottom],
    [box.x, box.y + box.height],
    [box.x, box.y - height],
  ];
}

const cornersOf = ({ x, y, width, height }: Box): Px[] => [
  [x, y],
  [x + width, y],
  [x + width, y + height],
  [x, y + height],
];

/** Shares of a region's length: near its ends, where members are told apart, before its middle. */
const ALONG = [0.1, 0.9, 0.5, 0.3, 0.7, 0.2, 0.8, 0.4, 0.6];

/** Over the middle of a region at several places of its length; where it is as thick as a label, first. */
function along(points: readonly Px[], box: Box, { width, height }: LabelSize): Px[] {
  const isUpright = box.height > box.width;
  const [start, length] = isUpright ? [box.y, box.height] : [box.x, box.width];
  const turned = points.map(([x, y]): Px => (isUpright ? [y, x] : [x, y]));
  return ALONG.flatMap((share) => {
    const at = start + share * length;
    const part = thickestAt(turned, at);
    return part ? [{ ...part, at, signs: Math.min(2, Math.floor(part.thickness / height)) }] : [];
  })
    .sort((a, b) => b.signs - a.signs)
    .map(({ at, middle }) => (isUpright ? [middle, at] : [at, middle]))
    .map(([x = 0, y = 0]): Px => [x - width / 2, y - height / 2]);
}

/** The thickest part of an outline at one place of its length; null: there is nothing. */
function thickestAt(points: readonly Px[], at: number): { thickness: number; middle: number } | null {
  const crossings = points
    .flatMap(([x, y], i) => {
      const [nx, ny] = points[(i + 1) % points.length] ?? [x, y];
      return x > at === nx > at ? [] : [y + ((at - x) / (nx - x)) * (ny - y)];
    })
    .sort((a, b) => a - b);
  let thickest: { thickness: number; middle: number } | null = null;
  for (let i = 0; i + 1 < crossings.length; i += 2) {
    const [from = 0, to = 0] = [crossings[i], crossings[i + 1]];
    if (!thickest || to - from > thickest.thickness)
      thickest = { thickness: to - from, middle: (from + to) / 2 };
  }
  return thickest;
}

function overlaps(a: Box, b: Box): boolean {
  return a.x < b.x + b.width && b.x < a.x + a.width && a.y < b.y + b.height && b.y < a.y + a.height;
}
