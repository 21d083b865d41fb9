import { describe, expect, it } from 'vitest';
import { decideCapture } from '#domain/photo/capture-time';
import { readExif } from '../../server/imaging/read-exif.ts';
import { HAS_SAMPLES, sample, sampleNames, saySoWithoutSamples } from '../support/samples.ts';

const captureOf = async (set: string, name: string, zone: string) => {
  const mediaType = /hei[cf]$/iu.test(name) ? 'image/heic' : 'image/jpeg';
  return decideCapture(await readExif(sample(set, name), mediaType), zone);
};

/** The traps that the samples' README lists, with what must come of each at a house of that place. */
const TRAPS: readonly [file: string, zone: string, expected: object][] = [
  [
    'exif_real/sony_as300_offset-0700_gps.jpg',
    'America/Los_Angeles',
    { source: 'own-offset', instant: '2018-06-08T20:32:28.000Z', uncertaintyS: 1 },
  ],
  [
    'exif_real/exiftool_8px_Google.jpg',
    'Europe/Madrid',
    { source: 'own-offset', instant: '2023-10-06T20:53:51.724Z', flags: [] },
  ],
  [
    'exif_real/iphone6s_offset+0100_heading_gps.jpg',
    'Europe/London',
    { source: 'own-offset', offsetMinutes: 60 },
  ],
  ['exif_real/pixel1_gpsutc.jpg', 'Europe/Berlin', { source: 'house-zone-and-gps', offsetMinutes: 120 }],
  [
    'exif_real/pixel1_gpsutc.jpg',
    'Asia/Tokyo',
    { source: 'gps-offset', offsetMinutes: 120, flags: ['camera-not-in-house-zone'] },
  ],
  ['exif_real/htc_desire_gpsutc.jpg', 'Asia/Tokyo', { source: 'gps-offset', offsetMinutes: 120 }],
  ['exif_real/iphone6plus_orient6_gpsutc+8.jpg', 'Asia/Tokyo', { source: 'gps-offset', offsetMinutes: 480 }],
  [
    'exif_real/exiftool_8px_GoPro.jpg',
    'Asia/Tokyo',
    { source: 'gps-offset', offsetMinutes: -240, uncertaintyS: 15 },
  ],
  [
    'exif_real/jhead_gpsinfo.jpg',
    'Asia/Tokyo',
    { source: 'gps-offset', offsetMinutes: -300, uncertaintyS: 31 },
  ],
  // Its GPS time repeats the local time of Beijing, where its position lies.
  [
    'exif_real/nikon_d2h_gps_eq_local.jpg',
    'Asia/Shanghai',
    { source: 'house-zone', offsetMinutes: 480, flags: ['gps-not-utc'] },
  ],
  ['exif_real/libexif_olympus_makernote_variant_4.jpg', 'Asia/Tokyo', { state: 'undated' }],
  ['timezones/Chars_exiftool.jpg', 'Europe/Stockholm', { source: 'house-zone', flags: ['implausible-year'] }],
  [
    'timezones/before_epoch.jpg',
    'Europe/Berlin',
    { state: 'undated', rejected: [{ why: 'implausible-year' }] },
  ],
  ['timezones/20240413-203800-Unknown.jpg', 'Europe/London', { source: 'house-zone', offsetMinutes: 60 }],
  [
    'heic/hmd_nokia83_no-datetimeoriginal.heif',
    'Europe/Istanbul',
    { source: 'gps-only', instant: '2022-01-12T07:30:14.000Z' },
  ],
  [
    'damaged/made/gps_utc_no_offset.jpg',
    'Europe/Vienna',
    { source: 'house-zone-and-gps', offsetMinutes: 120 },
  ],
  ['damaged/made/gps_utc_stale_27h.jpg', 'Europe/Vienna', { source: 'house-zone', flags: ['gps-stale'] }],
  [
    'damaged/made/gps_utc_disagrees_offset.jpg',
    'Europe/Vienna',
    { source: 'own-offset', instant: '2024-05-14T07:30:15.123Z', flags: ['gps-disagrees'] },
  ],
  ['exif_real/iphone4_heading.jpg', 'America/Chicago', { source: 'house-zone', flags: ['gps-unusable'] }],
  ['damaged/made/dst_gap.jpg', 'Europe/Vienna', { flags: ['skipped-hour'] }],
  ['damaged/made/dst_fold.jpg', 'Europe/Vienna', { flags: ['ambiguous-hour'] }],
  ['damaged/made/dst_fold_offset.jpg', 'Europe/Vienna', { offsetMinutes: 60, flags: [] }],
];

describe('the capture time of real files', () => {
  saySoWithoutSamples();

  // The file names are the order in UTC. Taken within five minutes in seven zones.
  it.each(HAS_SAMPLES ? ['Asia/Tokyo', 'Europe/London', 'America/New_York'] : [])(
    'orders the seven zones for a house in %s',
    async (zone) => {
      const names = sampleNames('timezones').filter((name) => name.startsWith('UTC-'));
      expect(names).toHaveLength(7);
      for (const name of names) {
        const [, date = '', time = ''] = name.split('-');
        const instant = `${date.replace(/(....)(..)/u, '$1-$2-')}T${time.replace(/(..)(..)/u, '$1:$2:')}.000Z`;
        expect([name, await captureOf('timezones', name, zone)]).toMatchObject([
          name,
          { instant, source: 'own-offset' },
        ]);
      }
    },
  );

  it.each(HAS_SAMPLES ? TRAPS : [])('%s at a house in %s', async (path, zone, expected) => {
    const at = path.lastIndexOf('/');
    expect(await captureOf(path.slice(0, at), path.slice(at + 1), zone)).toMatchObject(expected);
  });
});
