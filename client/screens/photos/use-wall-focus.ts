import {
  useLayoutEffect,
  useRef,
  useState,
  type FocusEvent,
  type KeyboardEvent,
  type RefObject,
} from 'react';
import type { WallPhotos } from './use-wall-photos.ts';
import { stepFrom, topOf, type ArrowKey, type Slot, type WallLayout } from './wall-layout.ts';

export interface HeldSlot extends Slot {
  readonly id?: string | undefined;
}

export interface WallFocus {
  /** The tile that has the focus: drawn however far away it is, so that the focus is never lost. */
  readonly held: Slot | null;
  /** Puts the focus on a tile as soon as it is drawn. */
  readonly hold: (slot: HeldSlot) => void;
  readonly onFocus: (event: FocusEvent<HTMLElement>) => void;
  readonly onBlur: (event: FocusEvent<HTMLElement>) => void;
  readonly onKeyDown: (event: KeyboardEvent<HTMLElement>) => void;
}

const ARROWS: readonly string[] = ['ArrowLeft', 'ArrowRight', 'ArrowUp', 'ArrowDown'] satisfies ArrowKey[];
const isArrow = (key: string): key is ArrowKey => ARROWS.includes(key);

export function useWallFocus(
  wall: RefObject<HTMLElement | null>,
  layout: WallLayout,
  photos: WallPhotos,
): WallFocus {
  const [kept, setKept] = useState<HeldSlot | null>(null);
  const isWanted = useRef(false);
  const id = kept?.id ?? (kept ? photos.at(kept)?.id : undefined);
  // The focus is on a photo, not on a place: it goes along when the photo moves.
  const held = kept && ((id === undefined ? undefined : photos.find(id, kept)) ?? kept);
  if (kept && id !== undefined && kept.id === undefined) setKept({ ...kept, id });
  const hold = (slot: HeldSlot) => {
    isWanted.current = true;
    setKept(slot);
  };
  useLayoutEffect(() => {
    const target = held && tileOf(wall.current, held);
    const active = document.activeElement;
    if (!target || target === active) return;
    if (!isWanted.current && !wall.current?.contains(active)) return;
    isWanted.current = false;
    target.focus({ preventScroll: true });
  });
  return {
    held,
    hold,
    onFocus({ target }) {
      const slot = slotOf(target);
      if (!slot) return;
      isWanted.current = false;
      setKept((now) => (now && isSame(now, slot) ? now : { ...slot, id: photos.at(slot)?.id }));
    },
    onBlur({ currentTarget, relatedTarget }) {
      if (!currentTarget.contains(relatedTarget) && !isWanted.current) setKept(null);
    },
    onKeyDown(event) {
      if (!held || !isArrow(event.key) || hasModifier(event) || !slotOf(event.target)) return;
      const next = stepFrom(layout, held, event.key);
      if (!next) return;
      event.preventDefault();
      bringIntoSight(wall.current, layout, next);
      hold({ ...next, id: photos.at(next)?.id });
    },
  };
}

const hasModifier = (event: KeyboardEvent) =>
  event.ctrlKey || event.metaKey || event.altKey || event.shiftKey;

const isSame = (a: Slot, b: Slot) => a.day === b.day && a.position === b.position;

/** Tiles carry their place in `data-day` (empty without a date) and `data-position`. */
function tileOf(wall: HTMLElement | null, { day, position }: Slot): HTMLElement | null {
  return wall?.querySelector(`a[data-day="${day ?? ''}"][data-position="${position}"]`) ?? null;
}

function slotOf(target: EventTarget): Slot | null {
  if (!(target instanceof HTMLElement)) return null;
  const { day, position } = target.dataset;
  return day === undefined ? null : { day: day === '' ? null : day, position: Number(position) };
}

/** As little as is needed, and never below the heading of the day, which stays at the top of the window. */
function bringIntoSight(wall: HTMLElement | null, layout: WallLayout, slot: Slot): void {
  const height = topOf(layout, slot);
  if (!wall || height === null) return;
  const { tileHeight, gap, head } = layout.shape;
  const top = wall.getBoundingClientRect().top + height;
  const over = top - head - gap;
  const under = top + tileHeight + gap - window.innerHeight;
  if (over < 0) window.scrollBy({ top: over, behavior: 'instant' });
  else if (under > 0) window.scrollBy({ top: under, behavior: 'instant' });
}
