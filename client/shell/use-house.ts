import { createContext, useContext } from 'react';
import { useQuery } from '@tanstack/react-query';
import { mayAct, type Act } from '#domain/contract/acts';
import type { HouseView } from '#domain/contract/views';
import { houseQuery } from '../api/house-query.ts';

/** What is said of a house, without what each tag changes: what shows this is not drawn again by every tag. */
export type PlainHouse = Omit<HouseView, 'counts'>;

export const HouseContext = createContext<PlainHouse | null>(null);

/** The house of the address; only below HouseFrame, which has loaded it. */
export function useHouse(): PlainHouse {
  const house = useContext(HouseContext);
  if (!house) throw new Error('useHouse is used outside of a house.');
  return house;
}

/** Whether one's role in the house allows an act: what it does not allow is not offered. */
export function useMay(act: Act): boolean {
  return mayAct(useHouse().role, act);
}

const NONE: HouseView['counts'] = { members: 0, photos: 0, tags: 0, coverings: 0 };

/** How much the house holds. */
export function useHouseCounts(): HouseView['counts'] {
  const query = useQuery({ ...houseQuery(useHouse().id), select: ({ counts }) => counts });
  return query.data ?? NONE;
}

/** The same object until something else than a count has changed. */
export const plainHouseQuery = (house: string) => ({
  ...houseQuery(house),
  select: ({ counts: _, ...facts }: HouseView): PlainHouse => facts,
});
