import type { KeyOrder } from './bench-keys.ts';
import { PAN, PICTURE, type BenchHands } from './obey.ts';

export type LookingHands = Pick<BenchHands, 'store' | 'viewer' | 'turn' | 'toSharpest'>;

/** What keys do for whoever may not tag: they move the picture, and go from photo to photo. False where a key means nothing. */
export function obeyLooking(order: KeyOrder, hands: LookingHands, target: Element): boolean {
  if (order.do === 'nudge') {
    if (target.closest(PICTURE) === null) return false;
    hands.viewer()?.pan([order.by[0] * PAN, order.by[1] * PAN]);
  } else if (order.do === 'zoom') hands.viewer()?.zoom(order.by);
  else if (order.do === 'turn') hands.turn(order.to);
  else if (order.do === 'sharpest') hands.toSharpest();
  else if (order.do === 'escape') hands.store.tell({ type: 'escape' });
  else return false;
  return true;
}
