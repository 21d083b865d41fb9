import { useLayoutEffect, useState, type RefObject } from 'react';
import type { Size } from './sheet-window.ts';

/** What an element measures in pixels, kept up with it. */
export function useSize(element: RefObject<HTMLElement | null>): Size {
  const [size, setSize] = useState<Size>({ width: 800, height: 500 });
  useLayoutEffect(() => {
    const { current } = element;
    if (!current) return undefined;
    const measure = () => {
      const { clientWidth: width, clientHeight: height } = current;
      // Nothing is measured while the page is printed or hidden.
      if (width > 0 && height > 0)
        setSize((before) =>
          before.width === width && before.height === height ? before : { width, height },
        );
    };
    measure();
    const observer = new ResizeObserver(measure);
    observer.observe(current);
    return () => observer.disconnect();
  }, [element]);
  return size;
}
