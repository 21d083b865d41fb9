import { sql } from 'kysely';
import type { AlikePhotoView } from '#domain/contract/alike-views';
import type { BurstView } from '#domain/contract/legibility-views';
import {
  findBursts,
  hashOfBits,
  LEAST_BITS,
  NEARLY_SAME_BITS,
  nearlySameAmong,
  sharpestOf,
  type AlikePair,
  type BurstPhoto,
  type HashedPhoto,
} from '#domain/photo/alike';
import type { Db } from '../open-database.ts';

/** How far around a photo its burst is looked for: a longer one is told in parts. */
const REACH_MS = 60_000;
const SHOWN = 50;

/** The bursts to which photos taken at these times may belong, by photo. */
export async function readBursts(
  db: Db,
  house: string,
  times: readonly (Date | null)[],
): Promise<Map<string, BurstView>> {
  const windows = mergeWindows(times.flatMap((time) => (time ? [time.getTime()] : [])));
  if (windows.length === 0) return new Map();
  const iso = (ms: number) => new Date(ms).toISOString();
  // Windows do not overlap, so no photo comes twice; each is a range of the index photo_order.
  const { rows } = await sql<Omit<BurstPhoto, 'at' | 'hash'> & { at: Date; hash: string | null }>`
    select photo.id, photo.captured_at as at, photo.width, photo.height, picture.hash::text as hash,
      picture.sharpness,
      nullif(concat_ws(' ', readings ->> 'make', readings ->> 'model', readings ->> 'serial'), '') as camera
    from jsonb_to_recordset(${JSON.stringify(windows.map(([from, to]) => ({ from: iso(from), to: iso(to) })))}::jsonb)
      as around("from" timestamptz, "to" timestamptz)
    join photo on photo.house_id = ${house} and photo.captured_at between around."from" and around."to"
    join picture on picture.photo_id = photo.id and picture.hash is not null`.execute(db);
  const photos = rows.map((row) => ({
    ...row,
    at: row.at.getTime(),
    hash: row.hash && hashOfBits(row.hash),
  }));
  return new Map(findBursts(photos).flatMap((burst) => burst.photos.map((photo) => [photo, burst])));
}

function mergeWindows(times: readonly number[]): [from: number, to: number][] {
  const merged: [number, number][] = [];
  for (const time of [...times].sort((a, b) => a - b)) {
    const last = merged.at(-1);
    if (last && time - REACH_MS <= last[1]) last[1] = time + REACH_MS;
    else merged.push([time - REACH_MS, time + REACH_MS]);
  }
  return merged;
}

/** Photos of the house that are almost identical with this one, whenever taken; the nearest first. */
export async function nearlySame(
  db: Db,
  house: string,
  photo: string,
): Promise<{ photo: string; distance: number }[]> {
  const { rows } = await sql<{ photo: string; distance: number }>`
    select other.photo_id as photo, bit_count(mine.hash # other.hash)::int as distance
    from picture as mine
    join picture as other on other.photo_id <> mine.photo_id
      and bit_count(mine.hash # other.hash) <= ${sql.lit(NEARLY_SAME_BITS)}
      and ${tellsApart('other')}
    join photo on photo.id = other.photo_id and photo.house_id = ${house}
    where mine.photo_id = ${photo} and ${tellsApart('mine')}
    order by distance, photo.captured_at, photo.id
    limit ${sql.lit(SHOWN)}`.execute(db);
  return rows;
}

/** So many are asked for in SQL one by one; above, all hashes of the house are fetched and compared. */
const FEW = 30;

/** Pairs of photos of the house that are almost identical, each once; only with one of `photos` among them, or all. */
export async function nearlySamePairs(
  db: Db,
  house: string,
  photos: readonly string[] | null,
): Promise<AlikePair[]> {
  if (photos === null || photos.length > FEW)
    return nearlySameAmong(await readHashes(db, house), photos && new Set(photos));
  const { rows } = await sql<AlikePair>`
    select distinct least(mine.photo_id, other.photo_id) as a, greatest(mine.photo_id, other.photo_id) as b,
      bit_count(mine.hash # other.hash)::int as distance
    from picture as mine
    join photo as own on own.id = mine.photo_id and own.house_id = ${house}
    join picture as other on other.photo_id <> mine.photo_id
      and bit_count(mine.hash # other.hash) <= ${sql.lit(NEARLY_SAME_BITS)}
      and ${tellsApart('other')}
    join photo on photo.id = other.photo_id and photo.house_id = ${house}
    where mine.photo_id in (${sql.join([...photos])}) and ${tellsApart('mine')}
    order by a, b`.execute(db);
  return rows;
}

async function readHashes(db: Db, house: string): Promise<HashedPhoto[]> {
  const { rows } = await sql<HashedPhoto>`
    select photo.id, picture.hash::text as hash from photo
    join picture on picture.photo_id = photo.id and picture.hash is not null
    where photo.house_id = ${house}`.execute(db);
  return rows.map(({ id, hash }) => ({ id, hash: hashOfBits(hash) }));
}

function tellsApart(picture: string) {
  const set = sql`bit_count(${sql.ref(`${picture}.hash`)})`;
  return sql`${set} between ${sql.lit(LEAST_BITS)} and ${sql.lit(64 - LEAST_BITS)}`;
}

/** Those of its burst and those almost identical, with the sharpest of all; nothing where it stands alone. */
export async function readAlike(
  db: Db,
  photo: string,
): Promise<{ photos: AlikePhotoView[]; sharpest: string | null }> {
  const mine = await db
    .selectFrom('photo')
    .select(['houseId', 'capturedAt'])
    .where('id', '=', photo)
    .executeTakeFirst();
  if (!mine) return { photos: [], sharpest: null };
  const same = await nearlySame(db, mine.houseId, photo);
  const burst = (await readBursts(db, mine.houseId, [mine.capturedAt])).get(photo)?.photos ?? [];
  const ids = [...new Set([...same.map((row) => row.photo), ...burst.filter((id) => id !== photo)])];
  if (ids.length === 0) return { photos: [], sharpest: null };
  const rows = await db
    .selectFrom('photo')
    .innerJoin('picture', 'picture.photoId', 'photo.id')
    .where('photo.id', 'in', [...ids, photo])
    .select(['photo.id', 'fileName', 'width', 'height', 'capturedAt', 'picture.state as pictures'])
    .select(['picture.sharpness'])
    .select((eb) =>
      sql<number | null>`bit_count(${eb.ref('picture.hash')} # ${eb
        .selectFrom('picture as mine')
        .select('mine.hash')
        .where('mine.photoId', '=', photo)})::int`.as('distance'),
    )
    .orderBy('capturedAt')
    .orderBy('photo.id')
    .execute();
  return {
    photos: rows
      .filter(({ id }) => id !== photo)
      .map(({ capturedAt, sharpness: _, distance, ...row }) => ({
        ...row,
        instant: capturedAt && capturedAt.toISOString(),
        distance: distance ?? 64,
      })),
    sharpest: sharpestOf(rows),
  };
}
