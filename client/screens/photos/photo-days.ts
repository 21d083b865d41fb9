import type { PhotoView } from '#domain/contract/views';

export interface PhotoGroup {
  readonly day: string;
  readonly photos: readonly PhotoView[];
}

/** Photos in the order of the list, cut where the day changes. Undated ones are of no day and left out. */
export function groupByDay(photos: readonly PhotoView[]): PhotoGroup[] {
  const groups: { day: string; photos: PhotoView[] }[] = [];
  for (const photo of photos) {
    if (photo.capture.state !== 'dated') continue;
    const { day } = photo.capture;
    const last = groups.at(-1);
    if (last?.day === day) last.photos.push(photo);
    else groups.push({ day, photos: [photo] });
  }
  return groups;
}
