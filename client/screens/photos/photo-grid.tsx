import type { PhotoView } from '#domain/contract/views';
import { PhotoTile } from './photo-tile.tsx';

export function PhotoGrid({ photos, search }: { photos: readonly PhotoView[]; search: string }) {
  return (
    <ul className="plain-list photos-grid">
      {photos.map((photo) => (
        <PhotoTile key={photo.id} photo={photo} search={search} />
      ))}
    </ul>
  );
}
