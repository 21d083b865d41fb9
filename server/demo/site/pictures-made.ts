import type { PhotoView } from '#domain/contract/views';
import type { SiteClient } from './site-client.ts';

const LOOK_EVERY_MS = 100;

/** Until every photo has its thumbnail and preview, so that the first screen shows them. */
export async function picturesMade(client: SiteClient, house: string, signal: AbortSignal): Promise<void> {
  for (;;) {
    signal.throwIfAborted();
    const { photos } = await client.get<{ photos: PhotoView[] }>(`/houses/${house}/photos?limit=1000`);
    if (photos.every(({ pictures }) => pictures !== 'pending')) return;
    await new Promise((resolve) => setTimeout(resolve, LOOK_EVERY_MS));
  }
}
