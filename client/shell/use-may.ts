import { mayAct, type Act } from '#domain/contract/acts';
import { useHouse } from './use-house.ts';

/** Whether one's role in the house of the address allows an act: what it does not allow is not offered. */
export function useMay(act: Act): boolean {
  return mayAct(useHouse().role, act);
}
