import { flushSync } from 'react-dom';

/**
 * The hand goes on to the words of what was just drawn: before this event is over, since whoever draws with
 * one hand and types with the other does not wait for the next frame. On a phone the form comes into sight,
 * with as much of the picture as there is room for.
 */
export function goToWords(bench: HTMLElement | null): void {
  // The form of the new drawing must be there.
  flushSync(() => undefined);
  const form = bench?.querySelector<HTMLElement>('.bench-words');
  const field = form?.querySelector<HTMLInputElement>('.mark-field input');
  if (!form || !field) return;
  // The field would open the phone's own keyboard over the picture, and a likely member may be right there.
  const hand = hasKeyboard() ? field : form;
  hand.focus({ preventScroll: true });
  if (hand === field) field.select();
  const isStill = window.matchMedia('(prefers-reduced-motion: reduce)').matches;
  form.scrollIntoView({ block: 'nearest', behavior: isStill ? 'auto' : 'smooth' });
}

/** A mouse or a trackpad comes with keys; a finger does not. */
function hasKeyboard(): boolean {
  return window.matchMedia('(any-pointer: fine)').matches;
}
