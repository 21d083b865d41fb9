import { useCallback, useEffect, useLayoutEffect, useRef, type RefObject } from 'react';
import type { WallPhotos } from './use-wall-photos.ts';
import { slotAt, topOf, type Slot, type WallLayout } from './wall-layout.ts';

interface Anchor {
  readonly slot: Slot;
  readonly id: string | undefined;
  /** Where its row stands in the page, so that scrolling alone moves it not. */
  readonly y: number;
}

/**
 * What one looks at stays where it is while others add photos above it, the window turns, or something
 * grows above the wall: the first row in sight is put back under one's eyes. Browsers do the like by
 * themselves only for what stands in the flow of the page, and not all of them. While the wall's own
 * beginning is in sight nothing is put back: there one waits for what is new.
 */
export function useSteadyWall(
  wall: RefObject<HTMLElement | null>,
  layout: WallLayout,
  photos: WallPhotos,
): void {
  const anchor = useRef<Anchor | null>(null);
  const latest = useRef({ layout, photos });
  const note = useCallback(() => {
    const top = wall.current?.getBoundingClientRect().top ?? 0;
    const { layout, photos } = latest.current;
    const slot = top < 0 ? slotAt(layout, -top) : null;
    const y = top + window.scrollY + (slot ? (topOf(layout, slot) ?? 0) : 0);
    anchor.current = slot && { slot, id: photos.at(slot)?.id, y };
  }, [wall]);
  const keep = useCallback(() => {
    const { layout, photos } = latest.current;
    const before = anchor.current;
    if (!before || !wall.current) return;
    const slot = (before.id === undefined ? undefined : photos.find(before.id, before.slot)) ?? before.slot;
    const height = topOf(layout, slot);
    const top = wall.current.getBoundingClientRect().top + window.scrollY;
    const moved = height === null ? 0 : top + height - before.y;
    if (Math.abs(moved) >= 1) window.scrollBy({ top: moved, behavior: 'instant' });
    note();
  }, [wall, note]);
  useLayoutEffect(() => {
    latest.current = { layout, photos };
    keep();
  });
  useEffect(() => {
    const watch = new ResizeObserver(keep);
    watch.observe(document.body);
    window.addEventListener('scroll', note, { passive: true });
    return () => {
      watch.disconnect();
      window.removeEventListener('scroll', note);
    };
  }, [keep, note]);
}
