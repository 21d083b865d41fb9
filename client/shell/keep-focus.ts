import { useEffect } from 'react';
import { focusContent } from './content.tsx';

/**
 * Where what had the focus is gone, e.g. the button of a step that is done, the focus stays with the content:
 * for the keys alone the way would else begin at the head of the page again.
 */
export function useKeptFocus(): void {
  useEffect(() => {
    let last: EventTarget | null = null;
    const note = ({ target }: FocusEvent) => {
      last = target;
    };
    const isGone = () => last instanceof Node && !last.isConnected;
    const look = () => {
      if (!isGone() || document.activeElement !== document.body) return;
      last = null;
      focusContent();
    };
    // A closing dialog gives the focus back by itself, a moment later.
    const observer = new MutationObserver(() => {
      if (isGone()) setTimeout(look, GIVEN_BACK_MS);
    });
    observer.observe(document.body, { childList: true, subtree: true });
    document.addEventListener('focusin', note);
    return () => {
      observer.disconnect();
      document.removeEventListener('focusin', note);
    };
  }, []);
}

const GIVEN_BACK_MS = 100;
