import type { PhotoView } from '#domain/contract/views';
import type { MediaType } from '#domain/contract/shapes';

export interface PictureLevel {
  readonly source: 'photoThumb' | 'photoPreview' | 'photoOriginal';
  readonly width: number;
  readonly height: number;
}

/** What every browser decodes by itself, turned upright by its Exif orientation (CSS Images 3, `from-image`). */
const SHOWN_EVERYWHERE: readonly MediaType[] = ['image/jpeg', 'image/png', 'image/webp'];
const THUMB = 320;
const PREVIEW = 1600;

/**
 * The pictures of one photo from small to large, as the viewer takes them. The original is left out where
 * no browser shows it, or where it has more pixels than `maxPixels`: a phone's canvas would stay empty.
 */
export function pictureLevels(photo: PhotoView, maxPixels: number): PictureLevel[] {
  const { width, height, mediaType, pictures } = photo;
  const made = pictures === 'ready' || pictures === 'damaged';
  const whole =
    SHOWN_EVERYWHERE.includes(mediaType) && width * height <= maxPixels && pictures !== 'unreadable';
  const levels: PictureLevel[] = [];
  if (made) levels.push(fitted('photoThumb', photo, THUMB));
  if (made && Math.max(width, height) > THUMB) levels.push(fitted('photoPreview', photo, PREVIEW));
  const largest = levels.at(-1)?.width ?? 0;
  if (whole && width > largest + 1) levels.push({ source: 'photoOriginal', width, height });
  return levels;
}

/** The proportions stay those of the original to the last digit, or regions would shift between levels. */
function fitted(source: PictureLevel['source'], { width, height }: PhotoView, side: number): PictureLevel {
  const scale = Math.min(1, side / Math.max(width, height));
  return { source, width: width * scale, height: height * scale };
}
