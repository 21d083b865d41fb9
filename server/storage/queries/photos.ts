import type { MediaType } from '#domain/contract/shapes';
import type { PhotoView } from '#domain/contract/views';
import type { Db } from '../open-database.ts';
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
export const viewOf = (row: PhotoRow): PhotoView => toPhotoView({ ...row, tags: row.tags ?? 0 });

export async function readPhoto(db: Db, photo: string): Promise<PhotoView | undefined> {
  const row = await photosWithState(db).where('photo.id', '=', photo).executeTakeFirst();
  return row && viewOf(row);
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
  return row && viewOf(row);
}

/** Ids of photos with a tag that stands. */
export const taggedPhotos = (db: Db, house: string) =>
  db.selectFrom('tag').select('photoId').where('houseId', '=', house).where('state', '=', 'standing');

export async function readPhotosWithoutPictures(db: Db): Promise<string[]> {
  const rows = await db
    .selectFrom('photo')
    .leftJoin('picture', 'picture.photoId', 'photo.id')
    .where('picture.photoId', 'is', null)
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
