import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { ReadPlaceShape } from '#domain/contract/place';
import { placeOf } from '#domain/place/place-of';
import { readExif } from '../../server/imaging/read-exif.ts';
import { HAS_SAMPLES, sample, sampleNames, saySoWithoutSamples } from '../support/samples.ts';

const SITE = { lat: 35.0116, lon: 135.7681, radiusM: 100 };

// Real phones and cameras. That readings are right is held against ExifTool elsewhere; here, that a place follows.
describe('the place of real pictures', () => {
  saySoWithoutSamples();
  it.runIf(HAS_SAMPLES)('is of the agreed shape, and none of them was taken in Kyoto', async () => {
    const places = await Promise.all(
      sampleNames('exif_real')
        .filter((name) => /\.jpe?g$/i.test(name) && readFileSync(sample('exif_real', name)).length > 0)
        .map(async (name) => {
          const readings = await readExif(sample('exif_real', name), 'image/jpeg');
          return placeOf(readings, { width: 4032, height: 3024 }, SITE, '2026-04-01T00:00:00.000Z');
        }),
    );
    for (const place of places) expect(ReadPlaceShape.parse(place)).toEqual(place);
    const placed = places.flatMap(({ site }) => site ?? []);
    expect(placed.length).toBeGreaterThan(10);
    for (const { verdict } of placed) expect(verdict).toBe('off-site');
    const turned = places.flatMap(({ heading }) => (heading?.reference === 'magnetic' ? heading : []));
    expect(turned.length).toBeGreaterThan(0);
    for (const { declination } of turned) expect(declination).not.toBeNull();
  });
});
