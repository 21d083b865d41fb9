import type { Tx } from '../tx.ts';
import { protectByZones } from './protection-hides.ts';
import { hideByZones } from './zone-hides.ts';

/** Where members lie is another: what zones hide of these, or of all, and what protection lies over. */
export async function lieAnew(
  tx: Tx,
  house: string,
  only: { readonly marks?: readonly string[] },
): Promise<void> {
  await hideByZones(tx, house, only);
  await protectByZones(tx, house, only);
}
