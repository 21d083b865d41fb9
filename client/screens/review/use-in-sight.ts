import { useEffect, useLayoutEffect, useRef } from 'react';

/** Of a pixel, since the window and what fills it are rarely whole ones. */
const SLACK = 1;

/**
 * Brings what fills the window into it, so that nobody scrolls at each member: `show` does once the next one is drawn,
 * since it may be taller, and leads the focus there.
 * `atOnce`: into sight also when it first comes, unless there is something to read above it.
 */
export function useInSight(atOnce: boolean) {
  const seen = useRef<HTMLElement>(null);
  // Never else: whoever scrolls away has a reason.
  const isWanted = useRef(atOnce);
  const isMoved = useRef(false);
  useLayoutEffect(() => {
    if (!isWanted.current) return;
    isWanted.current = false;
    const box = seen.current?.getBoundingClientRect();
    if (box && (box.top < -SLACK || box.bottom > window.innerHeight + SLACK)) seen.current?.scrollIntoView();
  });
  // Later: until a question is gone, nothing outside it takes the focus.
  useEffect(() => {
    if (isMoved.current) seen.current?.focus({ preventScroll: true });
    isMoved.current = false;
  });
  return { seen, show: () => (isWanted.current = isMoved.current = true) };
}
