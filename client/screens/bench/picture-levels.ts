import type { PhotoView } from '#domain/contract/views';
import type { MediaType } from '#domain/contract/shapes';

export interface PictureLevel {
  readonly source: 'photoThumb' | 'photoPreview' | 'photoWhole';
  readonly width: number;
  readonly height: number;
}

/** What the server makes a whole picture of quickly; a HEIC takes it seconds. */
const QUICKLY_MADE: readonly MediaType[] = ['image/jpeg', 'image/png', 'image/webp'];
const THUMB = 320;
const PREVIEW = 1600;

/**
 * The pictures of one photo from small to large, as the viewer takes them. The whole one is left out where
 * it is slow to make, or where it has more pixels than `maxPixels`: a phone's canvas would stay empty.
 */
export function pictureLevels(photo: PhotoView, maxPixels: number): PictureLevel[] {
  const { width, height, mediaType, pictures } = photo;
  const made = pictures === 'ready' || pictures === 'damaged';
  const whole = QUICKLY_MADE.includes(mediaType) && width * height <= maxPixels && pictures !== 'unreadable';
  const levels: PictureLevel[] = [];
  if (made) levels.push(fitted('photoThumb', photo, THUMB));
  if (made && Math.max(width, height) > THUMB) levels.push(fitted('photoPreview', photo, PREVIEW));
  const largest = levels.at(-1)?.width ?? 0;
  if (whole && width > largest + 1) levels.push({ source: 'photoWhole', width, height });
  return levels;
}

/** The proportions stay those of the original to the last digit, or regions would shift between levels. */
function fitted(source: PictureLevel['source'], { width, height }: PhotoView, side: number): PictureLevel {
  const scale = Math.min(1, side / Math.max(width, height));
  return { source, width: width * scale, height: height * scale };
}
