import type { Part } from './wall-pages.ts';
import { daysBetween, positionsBetween, type Slot, type WallDay, type WallLayout } from './wall-layout.ts';

/** What is drawn of a day: positions [first, end), and one besides, however far away it is. */
export interface DrawnPart extends Part {
  readonly of: WallDay;
}

/** The days between two heights; always those without a date, whose heading can be jumped to; always `held`. */
export function drawnParts(
  layout: WallLayout,
  view: { from: number; to: number },
  held: Slot | null,
): DrawnPart[] {
  const inView = new Set(daysBetween(layout, view.from, view.to));
  return layout.days
    .filter((of) => inView.has(of) || of.day === null || of.day === held?.day)
    .map((of) => {
      const { first, end } = positionsBetween(layout, of, view.from, view.to);
      const position = held?.day === of.day ? held.position : null;
      const isApart = position !== null && position < of.photos && (position < first || position >= end);
      return { day: of.day, first, end, besides: isApart ? position : null, of };
    });
}

/** The positions in their order. */
export function positionsOf({ first, end, besides }: DrawnPart): number[] {
  const row = Array.from({ length: end - first }, (_, i) => first + i);
  if (besides === null) return row;
  return besides < first ? [besides, ...row] : [...row, besides];
}
