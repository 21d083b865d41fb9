import type { Box, Flat } from '#domain/frame/drawing/flat';

/** What part of a sheet is in sight: its middle, and how many mm one pixel is. */
export interface SheetWindow {
  readonly middle: Flat;
  readonly unit: number;
}

export interface Size {
  readonly width: number;
  readonly height: number;
}

/** Room for the labels of lines above and of levels at the left, in pixels. */
const ROOM = { left: 84, top: 48, right: 28, bottom: 28 };
const NARROW_ROOM = { left: 58, top: 44, right: 16, bottom: 16 };
const NARROW = 560;
/** So near that a peg fills the screen. */
const NEAREST = 0.5;

/** The whole sheet. */
export function fitted({ left, top, right, bottom }: Box, { width, height }: Size): SheetWindow {
  const room = width < NARROW ? NARROW_ROOM : ROOM;
  const [free, high] = [width - room.left - room.right, height - room.top - room.bottom];
  const unit = Math.max((right - left) / Math.max(free, 1), (bottom - top) / Math.max(high, 1), NEAREST);
  return {
    middle: {
      u: (left + right) / 2 + ((room.right - room.left) / 2) * unit,
      v: (top + bottom) / 2 + ((room.bottom - room.top) / 2) * unit,
    },
    unit,
  };
}

/** Nearer by `factor` about a point that stays where it is; never farther than the whole. */
export function zoomed(now: SheetWindow, whole: SheetWindow, factor: number, about: Flat): SheetWindow {
  const unit = Math.max(NEAREST, now.unit / factor);
  if (unit >= whole.unit) return whole;
  const share = unit / now.unit;
  return {
    unit,
    middle: {
      u: about.u + (now.middle.u - about.u) * share,
      v: about.v + (now.middle.v - about.v) * share,
    },
  };
}

/** Moved by pixels; its middle stays on the sheet. */
export function moved({ middle, unit }: SheetWindow, dx: number, dy: number, bounds: Box): SheetWindow {
  const within = (value: number, low: number, high: number) => Math.min(high, Math.max(low, value));
  return {
    unit,
    middle: {
      u: within(middle.u - dx * unit, bounds.left, bounds.right),
      v: within(middle.v - dy * unit, bounds.top, bounds.bottom),
    },
  };
}

/** The point of a sheet under a pixel of its picture. */
export function pointUnder(
  { middle, unit }: SheetWindow,
  { width, height }: Size,
  x: number,
  y: number,
): Flat {
  return { u: middle.u + (x - width / 2) * unit, v: middle.v + (y - height / 2) * unit };
}

export function viewBoxOf({ middle, unit }: SheetWindow, { width, height }: Size): string {
  return [middle.u - (width / 2) * unit, middle.v - (height / 2) * unit, width * unit, height * unit].join(
    ' ',
  );
}

/** The part of the sheet that the window shows, in its own measure. */
export function seenIn({ middle: { u, v }, unit }: SheetWindow, { width, height }: Size): Box {
  const [wide, high] = [(width * unit) / 2, (height * unit) / 2];
  return { left: u - wide, right: u + wide, top: v - high, bottom: v + high };
}
