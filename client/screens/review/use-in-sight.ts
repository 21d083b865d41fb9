import { useLayoutEffect, useRef } from 'react';

/** Of a pixel, since the window and what fills it are rarely whole ones. */
const SLACK = 1;

/**
 * Brings what fills the window into it, so that nobody scrolls at each member. `atOnce`: also when it first comes,
 * unless there is something to read above it.
 */
export function useInSight(atOnce: boolean) {
  const seen = useRef<HTMLElement>(null);
  const show = () => {
    const box = seen.current?.getBoundingClientRect();
    if (box && (box.top < -SLACK || box.bottom > window.innerHeight + SLACK)) seen.current?.scrollIntoView();
  };
  useLayoutEffect(() => {
    if (atOnce) show();
    // Once: whoever scrolls away has a reason.
  }, []);
  return { seen, show };
}
