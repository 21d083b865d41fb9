import { sql, type RawBuilder } from 'kysely';
import type { MediaType } from '#domain/contract/shapes';
import type { PhotoView } from '#domain/contract/views';
import type { PhotoFilter, PhotoOrder, PhotoPage } from '../../services/record-store.ts';
import type { Db } from '../open-database.ts';
import { toPhotoView } from './views.ts';

function photosWithState(db: Db) {
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
const view = (row: PhotoRow): PhotoView => toPhotoView({ ...row, tags: row.tags ?? 0 });

export async function readPhoto(db: Db, photo: string): Promise<PhotoView | undefined> {
  const row = await photosWithState(db).where('photo.id', '=', photo).executeTakeFirst();
  return row && view(row);
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
  return row && view(row);
}

/** What a list is sorted by, ascending. `newest-day` counts days backwards; undated photos are last in both. */
const CAPTURED = sql`coalesce(photo.captured_at, 'infinity')`;
const SORTED_BY: Record<PhotoOrder, readonly RawBuilder<unknown>[]> = {
  capture: [CAPTURED, sql`photo.id`],
  'newest-day': [sql`coalesce(date '2000-01-01' - photo.capture_day, 2147483647)`, CAPTURED, sql`photo.id`],
};

/** One page; `after` is the last photo of the page before. */
export async function readPhotos(db: Db, house: string, filter: PhotoFilter): Promise<PhotoPage> {
  const matching = matchFilter(db, house, filter);
  const { total } = await matching
    .select((eb) => eb.fn.countAll<number>().as('total'))
    .executeTakeFirstOrThrow();
  const sortedBy = SORTED_BY[filter.order ?? 'capture'];
  let page = photosWithState(db).where('photo.id', 'in', matching.select('photo.id'));
  if (filter.after !== undefined) {
    const keys = sql.join([...sortedBy]);
    page = page.where(sql<boolean>`(${keys}) > (select ${keys} from photo where photo.id = ${filter.after})`);
  }
  for (const key of sortedBy) page = page.orderBy(key);
  const rows = await page.limit(filter.limit + 1).execute();
  const photos = rows.slice(0, filter.limit).map(view);
  return { photos, total, next: rows.length > filter.limit ? (photos.at(-1)?.id ?? null) : null };
}

/** Ids of photos with a tag that stands. */
export const taggedPhotos = (db: Db, house: string) =>
  db.selectFrom('tag').select('photoId').where('houseId', '=', house).where('state', '=', 'standing');

function matchFilter(db: Db, house: string, filter: PhotoFilter) {
  const standing = taggedPhotos(db, house);
  let query = db.selectFrom('photo').where('photo.houseId', '=', house);
  if (filter.day !== undefined) query = query.where('photo.captureDay', '=', filter.day);
  if (filter.mark !== undefined)
    query = query.where('photo.id', 'in', standing.where('mark', '=', filter.mark));
  if (filter.dated !== undefined)
    query = query.where('photo.captureDay', filter.dated ? 'is not' : 'is', null);
  if (filter.untagged) query = query.where('photo.id', 'not in', standing);
  return query;
}

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
