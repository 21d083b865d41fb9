import { useEffect, useMemo, useSyncExternalStore } from 'react';
import { newId } from '../api/new-id.ts';
import { isStillHere } from '../api/noted-account.ts';
import { useSession, useSessionState } from '../api/use-session.ts';
import { aloneInBrowser } from './alone-in-browser.ts';
import { askToPersist, browserFileStore } from './file-store.ts';
import { keepTrying } from './keep-trying.ts';
import { sendPhoto } from './send-photo.ts';
import { createUploads, type Uploads } from './upload-driver.ts';
import { isAtRisk, type UploadQueue } from './upload-queue.ts';

/** Lives as long as the window: going to another screen does not stop what is being sent. */
const uploads = createUploads({
  store: browserFileStore(),
  send: sendPhoto,
  alone: aloneInBrowser,
  isStillHere,
  makeId: newId,
  now: Date.now,
});

window.addEventListener('beforeunload', (event) => {
  if (uploads.queue().some(isAtRisk)) event.preventDefault();
});

const AGAIN_MS = 10_000;
const trying = keepTrying(uploads, AGAIN_MS);
window.addEventListener('online', trying.allNow);

/** From so many on they are worth asking the browser to keep them when its disk grows full. */
const MANY = 20;

/** Sends what this account has chosen in this browser, now or before the window was loaded. */
export function useSending(): void {
  const account = useSession().data?.account?.id ?? null;
  const state = useSessionState();
  const speaker = state === 'ended' || state === 'leaving' ? null : account;
  useEffect(() => {
    uploads.speakAs(speaker);
    if (speaker === null) return undefined;
    const goOn = () => {
      if (document.visibilityState === 'visible') void uploads.goOn();
    };
    goOn();
    // What another window has chosen and left behind is found by looking.
    const timer = setInterval(goOn, AGAIN_MS);
    document.addEventListener('visibilitychange', goOn);
    return () => {
      clearInterval(timer);
      document.removeEventListener('visibilitychange', goOn);
    };
  }, [speaker]);
}

export interface UploadsOfHouse {
  readonly mine: UploadQueue;
  /** Chosen in this browser by others, who must sign in for them to go. */
  readonly others: UploadQueue;
  readonly uploads: Uploads;
  readonly add: (files: readonly File[]) => void;
}

export function useUploads(house: string): UploadsOfHouse {
  const account = useSession().data?.account;
  const queue = useSyncExternalStore(uploads.subscribe, uploads.queue);
  const id = account?.id;
  const ofHouse = useMemo(() => queue.filter((item) => item.house === house), [queue, house]);
  const mine = useMemo(() => ofHouse.filter(({ by }) => by.id === id), [ofHouse, id]);
  const others = useMemo(() => ofHouse.filter(({ by }) => by.id !== id), [ofHouse, id]);
  const add = (files: readonly File[]) => {
    if (!account || files.length === 0) return;
    if (files.length >= MANY) void askToPersist();
    uploads.add(house, files, { id: account.id, name: account.name });
  };
  return { mine, others, uploads, add };
}

/** A file that misses the drop field would otherwise replace the page by itself. */
export function useNoStrayDrops(): void {
  useEffect(() => {
    const refuse = (event: DragEvent) => event.preventDefault();
    window.addEventListener('dragover', refuse);
    window.addEventListener('drop', refuse);
    return () => {
      window.removeEventListener('dragover', refuse);
      window.removeEventListener('drop', refuse);
    };
  }, []);
}
