import { describe, expect, it } from 'vitest';
import type { PhotoView } from '#domain/contract/views';
import { copyPhoto, wholePicture } from '../../server/services/copy-photo.ts';
import type { Context } from '../../server/services/context.ts';
import { cropPhoto } from '../../server/services/crop-photo.ts';
import { someReadings } from '../support/some-readings.ts';

const NOT_DECODED = new Error('This file cannot be decoded.');

/** A house with one photo in this state, of which nothing can be made. */
function contextWith(pictures: PhotoView['pictures'] | null): Context {
  const fails = () => Promise.reject(NOT_DECODED);
  const photo = pictures && {
    ...{ pictures, fileName: 'a.heic', sha256: 'x', mediaType: 'image/heic', width: 4, height: 3 },
    ...{ readings: someReadings({}), capture: { state: 'undated', rejected: [] } },
  };
  return {
    store: { read: { photo: () => Promise.resolve(photo ?? undefined) } },
    files: { original: () => 'o', picture: () => 'p' },
    imaging: { copy: fails, makeWhole: fails, crop: fails },
  } as unknown as Context;
}
const WAYS: Record<string, (context: Context) => Promise<unknown>> = {
  copy: (context) => copyPhoto(context, 'p', { position: false, serial: false }),
  whole: (context) => wholePicture(context, 'p'),
  crop: (context) => cropPhoto(context, 'p', 'percent:0,0,50,50', 100),
};

describe.each(Object.keys(WAYS))('%s of a file that cannot be decoded', (name) => {
  const way = WAYS[name] as (context: Context) => Promise<unknown>;
  it.each(['pending', 'unreadable'] as const)('is refused in a sentence while its pictures are %s', (state) =>
    expect(way(contextWith(state))).rejects.toMatchObject({
      code: 'photo-damaged',
      params: { file: 'a.heic' },
    }),
  );
  it('is a defect where pictures were made of it before', () =>
    expect(way(contextWith('ready'))).rejects.toBe(NOT_DECODED));
  it('is not there for a photo that is not', () =>
    expect(way(contextWith(null))).rejects.toMatchObject({ code: 'not-found' }));
});
