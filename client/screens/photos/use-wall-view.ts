import { useLayoutEffect, useState, type RefObject } from 'react';

/** What of the wall is drawn, in pixels from its top. */
export interface WallView {
  readonly from: number;
  readonly to: number;
  /** One rushes past: nothing new is fetched until one stops or slows down. */
  readonly isRushing: boolean;
}

/** A new part is drawn each time one has moved by so much, and not at each pixel. */
const STEP = 240;
/** Drawn above and below what is in sight, in heights of the window. */
const AHEAD = 0.6;
/** A whole window in less time than this is rushing. */
const RUSH_MS = 250;
const REST_MS = 120;

export function useWallView(wall: RefObject<HTMLElement | null>): WallView {
  const [view, setView] = useState<WallView>({ from: 0, to: 0, isRushing: false });
  useLayoutEffect(() => {
    let last = { y: window.scrollY, at: performance.now() };
    let rest: ReturnType<typeof setTimeout> | undefined;
    const look = (isRushing: boolean) => {
      if (!wall.current) return;
      const next = { ...inSight(wall.current), isRushing };
      setView((now) => (isSame(now, next) ? now : next));
    };
    const calm = () => {
      rest = undefined;
      look(false);
    };
    const scrolled = () => {
      const now = { y: window.scrollY, at: performance.now() };
      const isFast = isRush(last, now);
      last = now;
      if (isFast) {
        clearTimeout(rest);
        rest = setTimeout(calm, REST_MS);
      }
      look(rest !== undefined);
    };
    const resized = () => look(rest !== undefined);
    look(false);
    // The page changes its height where something above the wall does.
    const watch = new ResizeObserver(resized);
    watch.observe(document.body);
    window.addEventListener('scroll', scrolled, { passive: true });
    window.addEventListener('resize', resized);
    return () => {
      clearTimeout(rest);
      watch.disconnect();
      window.removeEventListener('scroll', scrolled);
      window.removeEventListener('resize', resized);
    };
  }, [wall]);
  return view;
}

function inSight(wall: HTMLElement): Pick<WallView, 'from' | 'to'> {
  const top = -wall.getBoundingClientRect().top;
  const height = window.innerHeight;
  return {
    from: Math.max(0, Math.floor((top - AHEAD * height) / STEP) * STEP),
    to: Math.ceil((top + (1 + AHEAD) * height) / STEP) * STEP,
  };
}

interface Moment {
  readonly y: number;
  readonly at: number;
}

/** A jump after a rest counts as if it had taken a tenth of a second. */
function isRush(before: Moment, now: Moment): boolean {
  const time = Math.min(100, Math.max(16, now.at - before.at));
  return Math.abs(now.y - before.y) / time > window.innerHeight / RUSH_MS;
}

function isSame(a: WallView, b: WallView): boolean {
  return a.from === b.from && a.to === b.to && a.isRushing === b.isRushing;
}
