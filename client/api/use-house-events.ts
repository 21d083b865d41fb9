import { useEffect } from 'react';
import { useQueryClient, type QueryClient } from '@tanstack/react-query';
import type { HouseEvent, HouseStateView } from '#domain/contract/house-events';
import { startLiveHouse, type Changed, type LiveParts } from '../live/live-house.ts';
import { tellMade } from '../live/made-pictures.ts';
import { createRefresher } from '../live/refresher.ts';
import { EVERYTHING, touchedBy, type HouseData, type Touched } from '../live/touched-parts.ts';
import { addressOf } from './address.ts';
import { call } from './call.ts';
import { keys } from './keys.ts';
import { touchLogOf } from './touch-logs.ts';

const ASK_LIMIT_MS = 10_000;
/** Many changes make one reading; what is read in small parts need not wait for it. */
const GATHER_MS = 200;
const FEW_MS = 20;

/** Keeps what is on screen in step with the house while it is open. */
export function useHouseEvents(house: string): void {
  const client = useQueryClient();
  useEffect(() => {
    const { changed, stop } = refreshing(client, house);
    const live = startLiveHouse({
      openStream: (heard, broken) => openStream(house, heard, broken),
      ask: (after) =>
        call('houseChanges', {
          params: { house },
          query: { after },
          signal: AbortSignal.timeout(ASK_LIMIT_MS),
        }),
      changed,
      known: knownOf(client, house),
      now: Date.now,
      isVisible: document.visibilityState === 'visible',
    });
    const look = () => live.tell(document.visibilityState === 'visible' ? 'shown' : 'hidden');
    const online = () => live.tell('online');
    document.addEventListener('visibilitychange', look);
    window.addEventListener('online', online);
    return () => {
      document.removeEventListener('visibilitychange', look);
      window.removeEventListener('online', online);
      live.stop();
      stop();
    };
  }, [client, house]);
}

/** As long as what was read of a house is remembered, it is remembered how old that is. */
const KNOWN = new WeakMap<QueryClient, Map<string, LiveParts['known']>>();

function knownOf(client: QueryClient, house: string): LiveParts['known'] {
  const houses = KNOWN.get(client) ?? new Map<string, { state: HouseStateView | null }>();
  KNOWN.set(client, houses);
  const known = houses.get(house) ?? { state: null };
  houses.set(house, known);
  return known;
}

/** One stream a window that is seen, none for the hidden ones: over HTTP/1.1 a browser has six connections. */
const openStream: (
  house: string,
  ...heard: Parameters<LiveParts['openStream']>
) => ReturnType<LiveParts['openStream']> = (house, heard, broken) => {
  const source = new EventSource(addressOf('houseEvents', { house }));
  source.onmessage = ({ data }: MessageEvent<string>) => {
    const event = readEvent(data);
    if (event) heard(event);
  };
  source.onerror = broken;
  return () => {
    source.onerror = null;
    source.close();
  };
};

function refreshing(client: QueryClient, house: string): { changed: Changed; stop: () => void } {
  const { soon, stop } = createRefresher({
    read: (part) => client.refetchQueries({ queryKey: JSON.parse(part) as unknown[], type: 'active' }),
    // Two people at one photo wait for each other; the rest can wait its turn.
    restOf: (part) => (part.includes('"photo"') ? 1 : 9),
    gatherOf: (part) => (/"photo"|"report"/.test(part) ? FEW_MS : GATHER_MS),
    now: Date.now,
  });
  const log = touchLogOf(house);
  const changed: Changed = (changes) => {
    if (!changes) tellMade(null);
    for (const { type, photo } of changes ?? []) if (type === 'pictures') tellMade(photo);
    for (const touched of changes?.flatMap(touchedBy) ?? EVERYTHING) {
      if (touched.part === 'report') log.note(touched.photo);
      const queryKey = keyOf(house, touched);
      const isOfPhoto = touched.part === 'report' && touched.photo !== null;
      // Stale at once, so that a screen that opens meanwhile reads it itself; by its log, what can be amended.
      void client.invalidateQueries({
        queryKey,
        refetchType: 'none',
        predicate: ({ meta }) => !(isOfPhoto && meta?.['isAmended']),
      });
      soon(JSON.stringify(queryKey));
    }
  };
  return { changed, stop };
}

const KEYS: Readonly<Record<Exclude<HouseData, 'photo'>, (house: string) => readonly unknown[]>> = {
  facts: keys.house,
  ground: keys.ground,
  people: keys.people,
  members: keys.members,
  photos: keys.allPhotos,
  coverings: keys.coverings,
  report: keys.report,
  findings: keys.allFindings,
  days: keys.days,
  ledger: keys.ledger,
};

function keyOf(house: string, { part, photo }: Touched): readonly unknown[] {
  if (part !== 'photo') return KEYS[part](house);
  return photo === null ? keys.allSingle(house) : keys.photo(house, photo);
}

function readEvent(data: string): HouseEvent | null {
  try {
    return JSON.parse(data) as HouseEvent;
  } catch {
    return null;
  }
}
