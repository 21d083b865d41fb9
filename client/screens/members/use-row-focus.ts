import {
  useEffect,
  useLayoutEffect,
  useRef,
  type FocusEvent,
  type KeyboardEvent,
  type MouseEvent,
  type RefObject,
} from 'react';
import type { Virtualizer } from '@tanstack/react-virtual';
import type { MemberView } from '#domain/contract/views';
import { listAddress, type ListPlace } from './list-address.ts';

export interface RowFocus {
  readonly list: RefObject<HTMLElement | null>;
  readonly rows: Virtualizer<Window, Element>;
  readonly members: readonly MemberView[];
  readonly place: Omit<ListPlace, 'at'>;
  readonly at: string | null;
  /** The row that has the focus: it stays in the page however far one scrolls. */
  readonly held: number | null;
  readonly setHeld: (row: number | null) => void;
}

/** Arrows go from row to row, and whoever comes back from a member finds its row and the focus on it. */
export function useRowFocus({ list, rows, members, place, at, held, setHeld }: RowFocus) {
  const wanted = useRef<number | null>(null);
  const go = (row: number, align: 'auto' | 'center') => {
    if (row < 0 || row >= members.length) return;
    wanted.current = row;
    setHeld(row);
    rows.scrollToIndex(row, { align });
  };
  const landed = useRef(false);
  useEffect(() => {
    if (landed.current || at === null) return;
    landed.current = true;
    // After the place to which the browser itself goes back: only where that is another one.
    requestAnimationFrame(() =>
      go(
        members.findIndex(({ mark }) => mark === at),
        'center',
      ),
    );
  });
  useLayoutEffect(() => {
    if (wanted.current === null) return;
    const link = list.current?.querySelector<HTMLElement>(`[data-index="${wanted.current}"] a`);
    if (!link) return;
    wanted.current = null;
    link.focus({ preventScroll: true });
  });
  return {
    onFocus: ({ target }: FocusEvent) => setHeld(rowOf(target)),
    onBlur({ currentTarget, relatedTarget }: FocusEvent) {
      if (!currentTarget.contains(relatedTarget) && wanted.current === null) setHeld(null);
    },
    onKeyDown(event: KeyboardEvent) {
      const step = { ArrowDown: 1, ArrowUp: -1 }[event.key];
      if (step === undefined || held === null) return;
      event.preventDefault();
      go(held + step, 'auto');
    },
    /** The address of the list says from where one went, so that the way back leads there. */
    onClickCapture({ target }: MouseEvent) {
      const mark = members[rowOf(target) ?? -1]?.mark;
      if (mark === undefined || !(target as Element).closest('a')) return;
      window.history.replaceState(window.history.state, '', listAddress({ ...place, at: mark }));
    },
  };
}

function rowOf(target: EventTarget): number | null {
  const row = target instanceof Element ? target.closest<HTMLElement>('[data-index]') : null;
  return row ? Number(row.dataset['index']) : null;
}
