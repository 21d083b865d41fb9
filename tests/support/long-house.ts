import { link, mkdir, writeFile } from 'node:fs/promises';
import path from 'node:path';
import { STAGES } from '#domain/frame/stage';
import type { DatabaseConfig } from '../../server/config.ts';
import { openDatabase } from '../../server/storage/open-database.ts';
import { DiskPhotoFiles } from '../../server/storage/photo-files.ts';
import { fillPhotos, namedIds, type FilledPhoto } from './fill-photos.ts';
import { makeJpeg } from './pictures.ts';
import { between, oneOf, seeded } from './seeded.ts';

const KINDS = ['柱', '貫', '梁', '土台', '小屋束', '垂木', '間渡竹', '足固め'];
const LINES = 'いろはにほへとちりぬるをわかよたれそ';
const PEOPLE = [
  { id: 'long-haru', name: 'Haru' },
  { id: 'long-mio', name: 'Mio' },
];
const FIRST = Date.UTC(2026, 2, 1);
const DAY_MS = 86_400_000;
const THUMBS = 12;

export interface LongHouse {
  readonly photos: number;
  readonly members: number;
}

/** The first members of the schedule are on many photos, the last on hardly any. Photos of five months of work in Japan, most of the days many, one in two hundred without a date. */
export function longHousePhotos(house: string, { photos, members }: LongHouse): FilledPhoto[] {
  const chance = seeded(20_260_301);
  return Array.from({ length: photos }, (_, i) => {
    const at = new Date(
      FIRST + Math.floor(chance() ** 1.3 * 150) * DAY_MS + Math.floor(between(chance, 8, 17) * 3600) * 1000,
    );
    const isDated = i % 200 !== 199;
    // The site lies nine hours east, so the wall time of these instants is theirs as written, less nine hours.
    const instant = new Date(at.getTime() - 9 * 3_600_000).toISOString();
    const tag = () => ({
      mark: markOf(Math.floor(chance() ** 3 * members)),
      stage: oneOf(chance, STAGES),
      state: 'standing' as const,
    });
    return {
      ...namedIds(`${house} long ${i}`),
      day: isDated ? at.toISOString().slice(0, 10) : null,
      instant: isDated ? instant : null,
      by: oneOf(chance, PEOPLE),
      tags: Array.from({ length: chance() < 0.5 ? 0 : Math.ceil(chance() * 4) }, tag),
    };
  });
}

export const markOf = (i: number): string =>
  `${LINES[i % LINES.length]}通り${KINDS[i % KINDS.length]}${Math.floor(i / 8) + 1}`;

/** Fills the tables while no server has them, and hangs the same few small pictures under all the photos. */
export async function fillLongHouse(
  place: { database: DatabaseConfig; dataFolder: string },
  house: string,
  size: LongHouse,
): Promise<FilledPhoto[]> {
  const photos = longHousePhotos(house, size);
  const database = await openDatabase(place.database);
  try {
    const members = Array.from({ length: size.members }, (_, i) => ({
      mark: markOf(i),
      kind: KINDS[i % KINDS.length],
      place: `${LINES[i % LINES.length]}通り`,
    }));
    await database.pool.query(
      `insert into member (house_id, mark, kind, name, place, note, other, retired)
       select $1, mark, kind, '', place, '', '{}', false from jsonb_to_recordset($2) as m(mark text, kind text, place text)`,
      [house, JSON.stringify(members)],
    );
    await fillPhotos(database.pool, house, photos);
  } finally {
    await database.close();
  }
  await hangThumbs(place.dataFolder, photos);
  return photos;
}

async function hangThumbs(dataFolder: string, photos: readonly FilledPhoto[]): Promise<void> {
  const files = new DiskPhotoFiles(dataFolder);
  const folder = path.join(dataFolder, 'long-house');
  await mkdir(folder, { recursive: true });
  const thumbs = await Promise.all(
    Array.from({ length: THUMBS }, async (_, i) => {
      const file = path.join(folder, `${i}.jpg`);
      await writeFile(file, await makeJpeg(i, {}, { width: 320, height: 240 }));
      return file;
    }),
  );
  for (const [i, { sha256 }] of photos.entries()) {
    await files.prepareForPictures(sha256);
    for (const size of ['thumb', 'preview'] as const)
      await link(thumbs[i % THUMBS] as string, files.picture(sha256, size));
  }
}
