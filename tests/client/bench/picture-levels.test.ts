import { describe, expect, test } from 'vitest';
import type { PhotoView } from '#domain/contract/views';
import { pictureLevels } from '../../../client/screens/bench/picture-levels.ts';

const MANY = 60_000_000;
const photo = (more: Partial<PhotoView> = {}) =>
  ({ width: 4000, height: 3000, mediaType: 'image/jpeg', pictures: 'ready', ...more }) as PhotoView;
const sources = (view: PhotoView, maxPixels = MANY) =>
  pictureLevels(view, maxPixels).map(({ source }) => source);

describe('the pictures of a photo', () => {
  test('from small to large, all in the same proportions', () => {
    expect(pictureLevels(photo(), MANY)).toEqual([
      { source: 'photoThumb', width: 320, height: 240 },
      { source: 'photoPreview', width: 1600, height: 1200 },
      { source: 'photoWhole', width: 4000, height: 3000 },
    ]);
    for (const { width, height } of pictureLevels(photo({ width: 3999, height: 3001 }), MANY))
      expect(width / height).toBeCloseTo(3999 / 3001, 12);
  });
  test('upright ones by their height', () => {
    expect(pictureLevels(photo({ width: 3000, height: 4000 }), MANY)[1]).toMatchObject({
      width: 1200,
      height: 1600,
    });
  });
  test.each(['image/heic', 'image/tiff', 'image/avif'] as const)(
    'without an original that is %s',
    (mediaType) => expect(sources(photo({ mediaType }))).toEqual(['photoThumb', 'photoPreview']),
  );
  test('without one that is too large to be drawn', () =>
    expect(sources(photo(), 11_000_000)).toEqual(['photoThumb', 'photoPreview']));
  test('without one that shows nothing more', () => {
    expect(sources(photo({ width: 1600, height: 900 }))).toEqual(['photoThumb', 'photoPreview']);
    expect(sources(photo({ width: 200, height: 100 }))).toEqual(['photoThumb']);
  });
  test('only the original while the small ones are being made', () => {
    expect(sources(photo({ pictures: 'pending' }))).toEqual(['photoWhole']);
    expect(sources(photo({ pictures: 'pending', mediaType: 'image/heic' }))).toEqual([]);
  });
  test('none of a file that cannot be read', () =>
    expect(sources(photo({ pictures: 'unreadable' }))).toEqual([]));
});
