import type { Point } from '#domain/frame/set-out';
import type { DrawnAxis } from './drawn-axis.ts';
import { seenThrough, type Pinhole, type Spot, type Stretch } from './pinhole.ts';

/** A straight member in space. */
export interface Line {
  readonly start: Point;
  readonly end: Point;
}

/** How exactly regions are drawn, in widths of the picture and in half widths of the region. Common practice. */
const ACROSS = { least: 0.006, ofHalf: 0.4 };
const ALONG = { least: 0.05, ofHalf: 0.5 };
/** What is farther off than so many of these is taken for a slip rather than for exact. */
const PART = 0.4;
const SLIP = 3;
const BEHIND = 12;

/**
 * How far a region lies from where this camera would see the member, in units of how exactly regions are drawn: its
 * two ends across the member, and along it from where the member ends in the picture.
 */
export function apart(drawn: DrawnAxis, { start, end }: Line, camera: Pinhole, tallness: number): number[] {
  const seen = seenThrough(camera, start, end);
  if (!seen) return [BEHIND, BEHIND, BEHIND, BEHIND];
  const line = turnedLike(seen, drawn);
  const inPicture = cutToPicture(line, tallness) ?? line;
  const [across, along] = [ACROSS, ALONG].map(({ least, ofHalf }) => least + ofHalf * drawn.half) as [
    number,
    number,
  ];
  return [
    offLine(drawn.from, line) / across,
    offLine(drawn.to, line) / across,
    short(-ahead(drawn.from, inPicture.from, drawn)) / along,
    short(ahead(drawn.to, inPicture.to, drawn)) / along,
  ].map(bent);
}

/** Often only a part of a member is drawn, seldom more than it. */
const short = (by: number) => (by > 0 ? by * PART : by);

/** Cauchy's loss as a residual: what is far off counts by the logarithm. */
const bent = (r: number) => Math.sign(r) * SLIP * Math.sqrt(Math.log1p((r / SLIP) ** 2));

const turnedLike = (line: Stretch, like: Stretch): Stretch =>
  (line.to.u - line.from.u) * (like.to.u - like.from.u) +
    (line.to.v - line.from.v) * (like.to.v - like.from.v) <
  0
    ? { from: line.to, to: line.from }
    : line;

function offLine({ u, v }: Spot, { from, to }: Stretch): number {
  const [du, dv] = [to.u - from.u, to.v - from.v];
  const length = Math.hypot(du, dv);
  // Seen along its axis a member is a spot.
  if (length < 1e-6) return Math.hypot(u - from.u, v - from.v);
  return ((v - from.v) * du - (u - from.u) * dv) / length;
}

function ahead(of: Spot, spot: Spot, { from, to }: Stretch): number {
  const [du, dv] = [to.u - from.u, to.v - from.v];
  return ((spot.u - of.u) * du + (spot.v - of.v) * dv) / Math.max(1e-6, Math.hypot(du, dv));
}

/** Liang and Barsky (1984); null where nothing of it is in the picture. */
function cutToPicture({ from, to }: Stretch, tallness: number): Stretch | null {
  const [du, dv] = [to.u - from.u, to.v - from.v];
  let [first, last] = [0, 1];
  const sides = [
    [-du, from.u + 0.5],
    [du, 0.5 - from.u],
    [-dv, from.v + tallness / 2],
    [dv, tallness / 2 - from.v],
  ] as const;
  for (const [toward, room] of sides) {
    if (toward === 0) {
      if (room < 0) return null;
    } else if (toward < 0) first = Math.max(first, room / toward);
    else last = Math.min(last, room / toward);
  }
  if (first >= last) return null;
  const at = (share: number) => ({ u: from.u + share * du, v: from.v + share * dv });
  return { from: at(first), to: at(last) };
}
