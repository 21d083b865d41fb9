import { useLayoutEffect, useRef } from 'react';

/** Of a pixel, since the window and what fills it are rarely whole ones. */
const SLACK = 1;

/**
 * Brings what fills the window into it, so that nobody scrolls at each member: `show` does once the next one is drawn,
 * since it may be taller. `atOnce`: also when it first comes, unless there is something to read above it.
 */
export function useInSight(atOnce: boolean) {
  const seen = useRef<HTMLElement>(null);
  // Never else: whoever scrolls away has a reason.
  const isWanted = useRef(atOnce);
  useLayoutEffect(() => {
    if (!isWanted.current) return;
    isWanted.current = false;
    const box = seen.current?.getBoundingClientRect();
    if (box && (box.top < -SLACK || box.bottom > window.innerHeight + SLACK)) seen.current?.scrollIntoView();
  });
  return { seen, show: () => (isWanted.current = true) };
}
