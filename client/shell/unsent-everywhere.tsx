import { useSyncExternalStore } from 'react';
import { useLocation, useMatch } from 'react-router';
import { useSession } from '../api/use-session.ts';
import { housesWithUnsent } from '../outbox/outbox.ts';
import { browserStorage } from '../outbox/browser-storage.ts';
import { UnsentNotice } from '../outbox/unsent-notice.tsx';
import { useOutbox } from '../outbox/use-outbox.ts';

/** Sends what was said at any photo without network, from whatever screen one is on, and says that it waits. */
export function UnsentEverywhere() {
  const account = useSession().data?.account;
  const atBench = useMatch('/houses/:house/photos/:photo')?.params.house;
  // Looks again at every change of screen and when another window has said something.
  useLocation();
  const houses = useSyncExternalStore(subscribeToStorage, readHouses);
  if (!account || houses === '') return null;
  return houses
    .split(' ')
    .filter((house) => house !== atBench)
    .map((house) => <Unsent key={house} house={house} />);
}

function Unsent({ house }: { house: string }) {
  return <UnsentNotice house={house} photo={null} inUse={useOutbox(house)} />;
}

function subscribeToStorage(listen: () => void): () => void {
  window.addEventListener('storage', listen);
  return () => window.removeEventListener('storage', listen);
}

/** As one text, so that the same houses are the same value. */
function readHouses(): string {
  return housesWithUnsent(browserStorage('localStorage')).join(' ');
}
