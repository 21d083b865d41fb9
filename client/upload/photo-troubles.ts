import type { PhotoView } from '#domain/contract/views';
import { findDoubt } from '#domain/photo/capture-doubts';
import type { PhotoTrouble } from './upload-queue.ts';

/** What the server found against a photo when it took it in: of its time, then of its place. */
export function troublesOf({ capture, place }: Pick<PhotoView, 'capture' | 'place'>): PhotoTrouble[] {
  const ofTime = capture.state === 'undated' ? 'undated' : findDoubt(capture.flags);
  const troubles: PhotoTrouble[] = ofTime ? [ofTime] : [];
  return place.site?.verdict === 'off-site' ? [...troubles, 'off-site'] : troubles;
}
