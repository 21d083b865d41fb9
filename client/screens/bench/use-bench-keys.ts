import { useEffect, useRef } from 'react';
import { keyOrder, type KeyOrder } from './bench-keys.ts';

/** Where letters are letters. */
const FIELDS = 'input:not([type=radio]):not([type=checkbox]), textarea, select';
/** Where one is at the bench: its own page, or nowhere in particular. */
const HERE = '.page:has(.bench), body, main, html';

/** The keys of the bench, wherever on its page the focus is. `obey` is false where a key means nothing. */
export function useBenchKeys(obey: (order: KeyOrder, target: Element) => boolean): void {
  const latest = useRef(obey);
  latest.current = obey;
  useEffect(() => {
    const onKeyDown = (event: KeyboardEvent) => {
      const order = orderOf(event);
      if (order && latest.current(order, event.target as Element)) event.preventDefault();
    };
    document.addEventListener('keydown', onKeyDown);
    return () => document.removeEventListener('keydown', onKeyDown);
  }, []);
}

function orderOf(event: KeyboardEvent): KeyOrder | null {
  const target = event.target as Element;
  if (event.defaultPrevented || event.isComposing || !isHere(target)) return null;
  const { key, code, shiftKey: shift, ctrlKey, metaKey, altKey: alt } = event;
  return keyOrder({ key, code, shift, command: ctrlKey || metaKey, alt }, target.matches(FIELDS));
}

function isHere(target: Element): boolean {
  // An open dialog has the keys, even when the focus has slipped out of it.
  if (document.querySelector('[role=dialog], [role=alertdialog]')) return false;
  return target.matches(HERE) || target.closest('.page:has(.bench)') !== null;
}

/**
 * The picture has the focus once it comes onto the bench, so that the keys can be used at once; but
 * not while somebody writes, or has gone on to something else by Tab.
 */
export function usePictureFocus(): void {
  useEffect(() => {
    // After the frame of the page, which takes the focus to the content of each new screen.
    const frame = requestAnimationFrame(() => {
      const active = document.activeElement;
      if (active === null || active.matches('body, main, .page')) focusPicture();
      if (window.matchMedia('(width <= 40rem) and (height > 30rem)').matches && window.scrollY === 0)
        document.querySelector('.bench')?.scrollIntoView({ block: 'start' });
    });
    return () => cancelAnimationFrame(frame);
  }, []);
}

export function focusPicture(): void {
  document.getElementById(PICTURE_ID)?.focus({ preventScroll: true });
}

export const PICTURE_ID = 'picture';
