import { describe, expect, it } from 'vitest';
import type { Readings } from '#domain/contract/shapes';
import { readExif } from '../../server/imaging/read-exif.ts';
import { readHead } from '../../server/imaging/read-head.ts';
import { sniff } from '../../server/imaging/sniff.ts';
import { HAS_SAMPLES, sample, sampleJson, saySoWithoutSamples } from '../support/samples.ts';
import { differences, type Field, type Truth } from './metadata-fields.ts';

const LEGACY = 'Exif in a text chunk of old ImageMagick, which is not read: PNG has had eXIf since 2017';
const LEGACY_FIELDS: Field[] = [
  ...(['DateTimeOriginal', 'SubSecTimeOriginal', 'OffsetTimeOriginal', 'GPSTime'] as const),
  ...(['GPSLatitude', 'GPSLongitude', 'GPSAltitude', 'Make', 'Model'] as const),
  ...(['FocalLength', 'FocalLengthIn35mmFormat'] as const),
];
const HEADER =
  'the block begins like one of a JPEG, which WebP does not ask for; ExifTool gives it only with a warning';

/** Every field in which we read something else than ExifTool 12.57 does in its Exif group, and why. */
const KNOWN: Record<string, readonly [fields: readonly Field[], reason: string]> = {
  'exif_real/exiftool_8px_Sanyo.jpg': [['FocalLengthIn35mmFormat'], '11113 mm is no focal length'],
  'exif_real/htc_one_gps-as-string.jpg': [
    ['GPSLatitude', 'GPSLongitude', 'GPSAltitude'],
    'position as text with decimal commas (ExifTool takes the fraction of the degrees for minutes)',
  ],
  'exif_real/jhead_3dmsc.jpg': [['DateTimeOriginal'], 'the same date, with slashes'],
  'exif_real/libexif_olympus_makernote_variant_4.jpg': [['DateTimeOriginal'], 'all zeros is no date'],
  'timezones/nom_exif-both.png': [
    ['GPSLatitude', 'GPSLongitude', 'GPSAltitude', 'GPSTime'],
    'the eXIf chunk and a text chunk hold two blocks; ExifTool ignores the GPS of this one as a repetition',
  ],
  'timezones/nom_exif-legacy.png': [LEGACY_FIELDS, LEGACY],
  'timezones/nom_exif-legacy-app1.png': [LEGACY_FIELDS, LEGACY],
  ...Object.fromEntries(
    [2, 3, 4, 5, 6, 7, 8].map((o) => [`orientation/pillow_hopper_${o}.webp`, [['Orientation'], HEADER]]),
  ),
  'heic/L_xmp.heif': [
    ['DateTimeOriginal', 'SubSecTimeOriginal'],
    'the date stands in XMP, beyond the Exif group',
  ],
};

type TruthOfFile = Truth & { SourceFile: string };
const truths = (set: string, file: string): TruthOfFile[] =>
  HAS_SAMPLES ? (sampleJson(set, file) as TruthOfFile[]) : [];

async function read(...name: [string, string]): Promise<Readings> {
  const sniffed = sniff(await readHead(sample(...name), 1024));
  if (sniffed.kind !== 'photo') throw new Error(`${name.join('/')} is ${sniffed.found}.`);
  return readExif(sample(...name), sniffed.mediaType);
}

describe.each(['exif_real', 'timezones', 'orientation', 'heic'])(
  'metadata of %s against ExifTool 12.57',
  (set) => {
    saySoWithoutSamples();

    it.each(truths(set, 'truth_exif_only.json'))('$SourceFile', async (truth) => {
      const found = differences(await read(set, truth.SourceFile), truth);
      const [known] = KNOWN[`${set}/${truth.SourceFile}`] ?? [[]];
      // Both ways: an unlisted difference fails, and so does a listed one that is gone.
      expect({ found, fields: Object.keys(found).sort() }).toEqual({ found, fields: [...known].sort() });
    });

    // The Exif group has no sign; ExifTool's composite tags in the full output do.
    const inExif = truths(set, 'truth_exif_only.json').filter((truth) => truth['GPSLatitude'] !== undefined);
    const names = inExif.map((truth) => truth.SourceFile);
    const placed = truths(set, 'truth.json').filter((truth) => names.includes(truth.SourceFile));
    it.each(placed)('$SourceFile lies in the right hemisphere', async (truth) => {
      const { position } = await read(set, truth.SourceFile);
      if (!position) return expect(KNOWN[`${set}/${truth.SourceFile}`]?.[0]).toContain('GPSLatitude');
      expect([Math.sign(position.lat), Math.sign(position.lon)]).toEqual([
        Math.sign(Number(truth['GPSLatitude'])),
        Math.sign(Number(truth['GPSLongitude'])),
      ]);
    });
  },
);
