import { useEffect, useRef, type RefObject } from 'react';
import { useQuery } from '@tanstack/react-query';
import { call } from '../../api/call.ts';
import { keys } from '../../api/keys.ts';
import { filterAddress, type PhotoFilter } from './photo-filter.ts';
import type { HeldSlot } from './use-wall-focus.ts';
import { topOf, type Slot, type WallLayout } from './wall-layout.ts';

interface Left {
  readonly photo: string;
  readonly slot: Slot;
  readonly y: number;
}

/** Where in this window each list was left. */
const left = new Map<string, Left>();

/** Before one goes to a photo: the address of the list says at which, so that the way back leads there. */
export function leaveAt(house: string, filter: PhotoFilter, photo: string, slot: Slot): void {
  left.set(house + filterAddress(filter), { photo, slot, y: window.scrollY });
  window.history.replaceState(window.history.state, '', filterAddress(filter, photo));
}

export interface Landing {
  readonly house: string;
  readonly filter: PhotoFilter;
  /** The photo that the address names. */
  readonly at: string | null;
  readonly wall: RefObject<HTMLElement | null>;
  readonly layout: WallLayout;
  readonly hold: (slot: HeldSlot) => void;
}

/** Coming from a photo, one is where one was; where one went on to others meanwhile, at the last of them. */
export function useLanding({ house, filter, at, wall, layout, hold }: Landing): void {
  const before = left.get(house + filterAddress(filter));
  const known = before?.photo === at ? before : undefined;
  const query = useQuery({
    queryKey: keys.photos(house, { as: 'place', ...filter, at }),
    enabled: at !== null && known === undefined,
    queryFn: async ({ signal }) =>
      (await call('countPhotos', { params: { house }, query: { ...filter, place: at ?? undefined }, signal }))
        .place,
  });
  const slot = known?.slot ?? query.data;
  const landed = useRef<string | null>(null);
  useEffect(() => {
    const height = slot ? topOf(layout, slot) : null;
    if (at === null || !slot || height === null || !wall.current || landed.current === at) return;
    landed.current = at;
    const top = wall.current.getBoundingClientRect().top + window.scrollY + height;
    const y = before && isInSight(top, before.y, layout) ? before.y : top - window.innerHeight / 2;
    window.scrollTo({ top: y, behavior: 'instant' });
    hold({ ...slot, id: at });
  });
}

function isInSight(top: number, y: number, { shape }: WallLayout): boolean {
  return top >= y + shape.head && top + shape.tileHeight <= y + window.innerHeight;
}
