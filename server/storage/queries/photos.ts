import type { MediaType } from '#domain/contract/shapes';
import type { PhotoView } from '#domain/contract/views';
import type { Db } from '../open-database.ts';
import { readBursts } from './alike.ts';
import { toPhotoView } from './views.ts';

/** Photos with what the machine has made of them and how many tags stand on them. */
export function photosWithState(db: Db) {
  return db
    .selectFrom('photo')
    .leftJoin('picture', 'picture.photoId', 'photo.id')
    .selectAll('photo')
    .select('picture.state as pictures')
    .select((eb) =>
      eb
        .selectFrom('tag')
        .select(eb.fn.countAll<number>().as('n'))
        .whereRef('tag.photoId', '=', 'photo.id')
        .where('tag.state', '=', 'standing')
        .as('tags'),
    );
}

type PhotoRow = Awaited<ReturnType<ReturnType<typeof photosWithState>['execute']>>[number];

/** With the bursts to which they belong, looked for once for all of them. */
export async function viewsOf(db: Db, rows: readonly PhotoRow[]): Promise<PhotoView[]> {
  const [first] = rows;
  if (!first) return [];
  const bursts = await readBursts(
    db,
    first.houseId,
    rows.map((row) => row.capturedAt),
  );
  return rows.map((row) => toPhotoView({ ...row, tags: row.tags ?? 0, burst: bursts.get(row.id) ?? null }));
}

export async function readPhoto(db: Db, photo: string): Promise<PhotoView | undefined> {
  const row = await photosWithState(db).where('photo.id', '=', photo).executeTakeFirst();
  return row && (await viewsOf(db, [row]))[0];
}

export async function readPhotoByContent(
  db: Db,
  house: string,
  sha256: string,
): Promise<PhotoView | undefined> {
  const row = await photosWithState(db)
    .where('photo.houseId', '=', house)
    .where('photo.sha256', '=', sha256)
    .executeTakeFirst();
  return row && (await viewsOf(db, [row]))[0];
}

/** Ids of photos with a tag that stands. */
export const taggedPhotos = (db: Db, house: string) =>
  db.selectFrom('tag').select('photoId').where('houseId', '=', house).where('state', '=', 'standing');

/** Also those of which an older program has made pictures without looking at what they are like. */
export async function readPhotosWithoutPictures(db: Db): Promise<string[]> {
  const rows = await db
    .selectFrom('photo')
    .leftJoin('picture', 'picture.photoId', 'photo.id')
    .where((eb) =>
      eb.or([
        eb('picture.photoId', 'is', null),
        eb.and([eb('picture.hash', 'is', null), eb('picture.state', '!=', 'unreadable')]),
      ]),
    )
    .select('photo.id')
    .orderBy('photo.addedAt')
    .execute();
  return rows.map((row) => row.id);
}

export async function readPhotoFile(db: Db, photo: string) {
  const row = await db
    .selectFrom('photo')
    .select(['houseId', 'sha256', 'mediaType', 'fileName'])
    .where('id', '=', photo)
    .executeTakeFirst();
  return (
    row && {
      house: row.houseId,
      sha256: row.sha256,
      mediaType: row.mediaType as MediaType,
      fileName: row.fileName,
    }
  );
}
