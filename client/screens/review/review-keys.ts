import { useEffect, useRef } from 'react';

export type ReviewOrder =
  | { readonly do: 'seen' | 'words' | 'lacks' | 'missing' | 'doubt' | 'record' | 'large' | 'open' | 'end' }
  | { readonly do: 'turn'; readonly by: 1 | -1 }
  | { readonly do: 'reason'; readonly which: number };

const KEYS: Readonly<Record<string, ReviewOrder>> = {
  s: { do: 'seen' },
  w: { do: 'words' },
  l: { do: 'lacks' },
  m: { do: 'missing' },
  d: { do: 'doubt' },
  r: { do: 'record' },
  u: { do: 'open' },
  z: { do: 'large' },
  e: { do: 'end' },
  ArrowLeft: { do: 'turn', by: -1 },
  ArrowRight: { do: 'turn', by: 1 },
  1: { do: 'reason', which: 0 },
  2: { do: 'reason', which: 1 },
  3: { do: 'reason', which: 2 },
};

/** What a key means in a review. */
export function reviewOrder(key: string): ReviewOrder | null {
  return KEYS[key.length === 1 ? key.toLowerCase() : key] ?? null;
}

/** Where letters are letters. */
const FIELDS = 'input, textarea, select';

/** The keys of the review, wherever on its page the focus is. */
export function useReviewKeys(obey: (order: ReviewOrder) => void): void {
  const latest = useRef(obey);
  latest.current = obey;
  useEffect(() => {
    const onKeyDown = (event: KeyboardEvent) => {
      const order = orderOf(event);
      if (!order) return;
      event.preventDefault();
      latest.current(order);
    };
    document.addEventListener('keydown', onKeyDown);
    return () => document.removeEventListener('keydown', onKeyDown);
  }, []);
}

function orderOf(event: KeyboardEvent): ReviewOrder | null {
  const { key, ctrlKey, metaKey, altKey } = event;
  const target = event.target as Element;
  if (event.defaultPrevented || event.isComposing || ctrlKey || metaKey || altKey) return null;
  if (target.matches(FIELDS) || document.querySelector('[role=dialog], [role=alertdialog]')) return null;
  const isHere = target.matches('body, main, html') || target.closest('.page:has(.review)') !== null;
  return isHere ? reviewOrder(key) : null;
}
