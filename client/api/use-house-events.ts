import { useEffect } from 'react';
import { useQueryClient, type QueryClient } from '@tanstack/react-query';
import type { HouseEvent } from '#domain/contract/views';
import { addressOf } from './address.ts';
import { keys } from './keys.ts';

const GATHER_MS = 400;

/** Keeps what is on screen in step with the house while it is open; many events make one refresh. */
export function useHouseEvents(house: string): void {
  const client = useQueryClient();
  useEffect(() => {
    const source = new EventSource(addressOf('houseEvents', { house }));
    const refresh = gather((wide) => refreshHouse(client, house, wide));
    let opened = false;
    source.onopen = () => {
      // After a break nobody knows what was missed.
      if (opened) refresh.soon(true);
      opened = true;
    };
    source.onmessage = (message: MessageEvent<string>) => {
      const event = readEvent(message.data);
      if (event) refresh.soon(event.type === 'statement');
    };
    return () => {
      source.close();
      refresh.stop();
    };
  }, [client, house]);
}

function refreshHouse(client: QueryClient, house: string, wide: boolean): void {
  const parts = wide
    ? [keys.allOf(house)]
    : [keys.allPhotos(house), keys.days(house), ['house', house, 'photo'] as const];
  for (const queryKey of parts) void client.invalidateQueries({ queryKey });
}

function gather(run: (wide: boolean) => void) {
  let timer: ReturnType<typeof setTimeout> | undefined;
  let wide = false;
  return {
    soon(isWide: boolean) {
      wide ||= isWide;
      timer ??= setTimeout(() => {
        timer = undefined;
        run(wide);
        wide = false;
      }, GATHER_MS);
    },
    stop: () => clearTimeout(timer),
  };
}

function readEvent(data: string): HouseEvent | null {
  try {
    return JSON.parse(data) as HouseEvent;
  } catch {
    return null;
  }
}
