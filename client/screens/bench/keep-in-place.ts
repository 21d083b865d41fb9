import type { RefObject } from 'react';
import { SHEET } from './region-shape.ts';
import type { View } from './viewer.ts';

export interface Following {
  readonly follow: RefObject<((view: View) => void) | null>;
  readonly firstView: () => View;
  /** The picture has come to rest this wide on the screen: labels find their places anew. */
  readonly onRest: (width: number) => void;
}

const REST_MS = 100;

/**
 * Keeps the drawing over the picture without asking React. While the picture moves, the drawing is moved as
 * one layer, which costs the same for one region as for hundreds; it is drawn anew when the picture rests.
 */
export function keepInPlace(
  layer: HTMLElement,
  sheet: SVGGElement,
  { follow, firstView, onRest }: Following,
): () => void {
  let drawn = firstView();
  let latest = drawn;
  let rest: ReturnType<typeof setTimeout> | undefined;

  const draw = () => {
    drawn = latest;
    const scale = drawn.width / SHEET;
    sheet.setAttribute('transform', `translate(${drawn.x} ${drawn.y}) scale(${scale})`);
    layer.style.setProperty('--inverse', String(1 / scale));
    layer.style.transform = '';
    onRest(drawn.width);
  };
  follow.current = (view) => {
    if (view.x === latest.x && view.y === latest.y && view.width === latest.width) return;
    latest = view;
    layer.style.transform = layerTransform(drawn, view);
    clearTimeout(rest);
    rest = setTimeout(draw, REST_MS);
  };
  draw();
  return () => {
    clearTimeout(rest);
    follow.current = null;
  };
}

/** What brings a layer that was drawn for one view to where it belongs in another; its origin is the top left. */
export function layerTransform(from: View, to: View): string {
  const scale = to.width / from.width;
  return `translate(${to.x - from.x * scale}px, ${to.y - from.y * scale}px) scale(${scale})`;
}
