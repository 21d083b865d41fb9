import { useEffect, useMemo, useSyncExternalStore } from 'react';
import { newId } from '../api/new-id.ts';
import { sendPhoto } from './send-photo.ts';
import { createUploads, type Uploads } from './upload-driver.ts';
import { isOver, type UploadQueue } from './upload-queue.ts';

/** Lives as long as the window: going to another screen does not stop what is being sent. */
const uploads = createUploads(sendPhoto, newId);

window.addEventListener('beforeunload', (event) => {
  if (uploads.queue().some((item) => !isOver(item))) event.preventDefault();
});

// Back in the network: what found no server is sent again by itself.
window.addEventListener('online', () => {
  const unheard = uploads.queue().filter(({ state }) => state.is === 'failed' && state.problem === null);
  uploads.tell({ type: 'again', ids: unheard.map(({ id }) => id) });
});

/** The uploads of one house. */
export function useUploads(house: string): { items: UploadQueue; uploads: Uploads } {
  const queue = useSyncExternalStore(uploads.subscribe, uploads.queue);
  const items = useMemo(() => queue.filter((item) => item.house === house), [queue, house]);
  return { items, uploads };
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
