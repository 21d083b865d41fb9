import type { PhotoView } from '#domain/contract/views';

export interface PhotoGroup {
  /** null: the undated ones, which the server lists last. */
  readonly day: string | null;
  readonly photos: readonly PhotoView[];
}

/** Photos in the order of the list, cut where the day changes. */
export function groupByDay(photos: readonly PhotoView[]): PhotoGroup[] {
  const groups: { day: string | null; photos: PhotoView[] }[] = [];
  for (const photo of photos) {
    const day = photo.capture.state === 'dated' ? photo.capture.day : null;
    const last = groups.at(-1);
    if (last?.day === day) last.photos.push(photo);
    else groups.push({ day, photos: [photo] });
  }
  return groups;
}
