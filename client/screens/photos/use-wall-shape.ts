import { useLayoutEffect, useMemo, useState, type RefObject } from 'react';
import { tilesFor, type WallShape } from './wall-layout.ts';

/** In rem: what is written on and above a tile grows with the reader's letters. */
const GAP = 0.5;
const HEAD = 3.25;
const WORDS = 1.75;
const TILE = { narrow: 6.75, wide: 10.5 };
const NARROW = 40;

interface Room {
  readonly width: number;
  readonly rem: number;
}

/** As it was last: coming back to the wall one sees it whole in the first moment. */
let lastRoom: Room = { width: 0, rem: 16 };

/** The measures of tiles for the room there is; `undatedHead` is measured by whoever draws it. */
export function useWallShape(wall: RefObject<HTMLElement | null>, undatedHead: number): WallShape {
  const [room, setRoom] = useState(lastRoom);
  useLayoutEffect(() => {
    const element = wall.current;
    if (!element) return;
    const measure = () => {
      const rem = parseFloat(getComputedStyle(document.documentElement).fontSize) || 16;
      const next = { width: element.clientWidth, rem };
      setRoom((now) => (now.width === next.width && now.rem === next.rem ? now : next));
      lastRoom = next;
    };
    measure();
    const watch = new ResizeObserver(measure);
    watch.observe(element);
    return () => watch.disconnect();
  }, [wall]);
  return useMemo(() => {
    const { width, rem } = room;
    const least = (width < NARROW * rem ? TILE.narrow : TILE.wide) * rem;
    const gap = GAP * rem;
    return { ...tilesFor(width, least, gap, WORDS * rem), gap, head: HEAD * rem, undatedHead };
  }, [room, undatedHead]);
}
