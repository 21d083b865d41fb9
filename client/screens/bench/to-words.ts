import { flushSync } from 'react-dom';

/**
 * The hand goes on to the words of what was just drawn: before this event is over, since whoever draws with
 * one hand and types with the other does not wait for the next frame. On a phone the form comes into sight,
 * with as much of the picture as there is room for.
 */
export function goToWords(bench: HTMLElement | null): void {
  // The form of the new drawing must be there.
  flushSync(() => undefined);
  const field = bench?.querySelector<HTMLInputElement>('.mark-field input');
  if (!field) return;
  field.focus({ preventScroll: true });
  field.select();
  const isStill = window.matchMedia('(prefers-reduced-motion: reduce)').matches;
  field.closest('form')?.scrollIntoView({ block: 'nearest', behavior: isStill ? 'auto' : 'smooth' });
}
