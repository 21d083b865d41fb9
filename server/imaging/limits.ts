import type { MediaType } from '#domain/contract/shapes';

/** Largest picture that is taken, in pixels. A decoded one is held in memory at up to four bytes each. */
export const MAX_PIXELS = 100_000_000;
/** Hard limit of the work on one file, so that an answer is there within ten seconds; HEIC has its own. */
export const LIMIT_SECONDS = 9;
export const THUMB_SIDE = 320;
export const PREVIEW_SIDE = 1600;
export const JPEG_QUALITY = 80;

/**
 * The mildest complaint of the decoder that counts as damage. JPEG decoders report lost data as warnings;
 * those of the other formats warn of harmless things too, such as unknown tags and odd colour profiles.
 */
export function strictness(mediaType: MediaType): 'warning' | 'error' {
  return mediaType === 'image/jpeg' ? 'warning' : 'error';
}

/** Rejects after the limit. The work itself may go on in the background until its own limit ends it. */
export async function withinLimit<T>(work: Promise<T>): Promise<T> {
  let timer: NodeJS.Timeout | undefined;
  const late = new Promise<never>((_, reject) => {
    timer = setTimeout(() => reject(new Error('Time limit reached.')), LIMIT_SECONDS * 1000);
  });
  try {
    return await Promise.race([work, late]);
  } finally {
    clearTimeout(timer);
  }
}
