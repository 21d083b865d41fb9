import type { PhotoView } from '#domain/contract/views';
import { findDoubt } from '#domain/photo/capture-doubts';
import { useWords } from '../../i18n/use-words.ts';
import { PhotoStrip } from './photo-strip.tsx';

/** All photos of a day; those whose date cannot be say so. */
export function DayPhotos({ photos }: { photos: readonly PhotoView[] }) {
  const { t } = useWords();
  const small = photos.map((photo) => ({
    ...photo,
    instant: photo.capture.state === 'dated' ? photo.capture.instant : null,
    doubt: photo.capture.state === 'dated' ? findDoubt(photo.capture.flags) : null,
  }));
  return <PhotoStrip photos={small} label={t('days.day.photos')} />;
}
