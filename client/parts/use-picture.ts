import { useEffect, useState } from 'react';
import { whenMade } from '../live/made-pictures.ts';

/** After each time that it did not come; the server makes one that has gone when it is first asked for. */
export const PAUSES_MS: readonly number[] = [1000, 3000, 10_000, 30_000];

export interface Picture {
  /** 'resting': it did not come and will be asked for again; 'missing': nobody asks any more by themselves. */
  readonly state: 'asked' | 'resting' | 'missing';
  readonly onError: () => void;
}

/** Asks for a picture again after growing pauses, and whenever it has been made or the network is back. */
export function usePicture(photo: string): Picture {
  const [{ failures, isAsked }, setAsking] = useState({ failures: 0, isAsked: true });
  useEffect(() => {
    if (isAsked) return undefined;
    const again = () => setAsking({ failures, isAsked: true });
    const pause = PAUSES_MS[failures - 1];
    const timer = pause === undefined ? undefined : setTimeout(again, pause);
    const forget = whenMade(photo, again);
    window.addEventListener('online', again);
    return () => {
      clearTimeout(timer);
      forget();
      window.removeEventListener('online', again);
    };
  }, [photo, failures, isAsked]);
  const waiting = failures > PAUSES_MS.length ? 'missing' : 'resting';
  return {
    state: isAsked ? 'asked' : waiting,
    onError: () => setAsking({ failures: failures + 1, isAsked: false }),
  };
}
