import { useEffect, useMemo, useSyncExternalStore } from 'react';
import { newId } from '../api/new-id.ts';
import { keepTrying } from './keep-trying.ts';
import { sendPhoto } from './send-photo.ts';
import { createUploads, type Uploads } from './upload-driver.ts';
import { createLeftovers, isUnsent } from './unsent-files.ts';
import type { UploadQueue } from './upload-queue.ts';

/** Lives as long as the window: going to another screen does not stop what is being sent. */
const uploads = createUploads(sendPhoto, newId);

const leftovers = createLeftovers(() => window.sessionStorage);
uploads.subscribe(() => leftovers.follow(uploads.queue()));

window.addEventListener('beforeunload', (event) => {
  if (uploads.queue().some(isUnsent)) event.preventDefault();
});

const AGAIN_MS = 10_000;
const trying = keepTrying(uploads, AGAIN_MS);
window.addEventListener('online', trying.allNow);

/** The uploads of one house. */
export function useUploads(house: string): { items: UploadQueue; uploads: Uploads } {
  const queue = useSyncExternalStore(uploads.subscribe, uploads.queue);
  const items = useMemo(() => queue.filter((item) => item.house === house), [queue, house]);
  return { items, uploads };
}

/** What was chosen before this page was loaded and had not been sent. */
export function useLeftovers(house: string): { names: readonly string[]; forget: () => void } {
  const left = useSyncExternalStore(leftovers.subscribe, leftovers.current);
  return { names: left[house] ?? [], forget: () => leftovers.forget(house) };
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
