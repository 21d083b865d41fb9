import { createContext, useContext } from 'react';
import type { HouseView } from '#domain/contract/views';

export const HouseContext = createContext<HouseView | null>(null);

/** The house of the address; only below HouseFrame, which has loaded it. */
export function useHouse(): HouseView {
  const house = useContext(HouseContext);
  if (!house) throw new Error('useHouse is used outside of a house.');
  return house;
}
