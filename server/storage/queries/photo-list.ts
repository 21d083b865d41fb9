import { sql, type RawBuilder } from 'kysely';
import type { Person } from '#domain/contract/shapes';
import type {
  PhotoCounts,
  PhotoFilter,
  PhotoOrder,
  PhotoPage,
  PhotoWindow,
} from '../../services/record-store.ts';
import type { Db } from '../open-database.ts';
import { photosWithState, viewsOf } from './photos.ts';

/** The list of photos: which of them, in which order, and its shape. Undated photos are last in every order. */

const ORDERED_BY: Record<PhotoOrder, RawBuilder<unknown>> = {
  capture: sql`photo.captured_at nulls last, photo.id`,
  'newest-day': sql`photo.capture_day desc nulls last, photo.captured_at nulls last, photo.id`,
};

const CAPTURED = sql`coalesce(photo.captured_at, 'infinity')`;
/** The same orders as rows that grow from one photo to the next, to be compared: days count backwards there. */
const RISING: Record<PhotoOrder, RawBuilder<unknown>> = {
  capture: sql`${CAPTURED}, photo.id`,
  'newest-day': sql`coalesce(date '2000-01-01' - photo.capture_day, 2147483647), ${CAPTURED}, photo.id`,
};

/** One page; `after` is the last photo of the page before. */
export async function readPhotos(
  db: Db,
  house: string,
  filter: PhotoFilter,
  { order = 'capture', after, offset = 0, limit }: PhotoWindow,
): Promise<PhotoPage> {
  const matching = matchFilter(db, house, filter);
  const { total } = await matching
    .select((eb) => eb.fn.countAll<number>().as('total'))
    .executeTakeFirstOrThrow();
  let ids = matching.select('photo.id');
  if (after !== undefined) {
    const key = RISING[order];
    const last = sql`select ${key} from photo where photo.id = ${after} and photo.house_id = ${house}`;
    ids = ids.where(sql<boolean>`(${key}) > (${last})`);
  }
  // First which, then what they hold: the wide rows of those passed over are never read.
  const page = ids
    .orderBy(ORDERED_BY[order])
    .offset(offset)
    .limit(limit + 1);
  const rows = await photosWithState(db).where('photo.id', 'in', page).orderBy(ORDERED_BY[order]).execute();
  const photos = await viewsOf(db, rows.slice(0, limit));
  return { photos, total, next: rows.length > limit ? (photos.at(-1)?.id ?? null) : null };
}

export async function readPhotoCounts(
  db: Db,
  house: string,
  filter: PhotoFilter,
  place?: string,
): Promise<PhotoCounts> {
  const rows = await matchFilter(db, house, filter)
    .groupBy('photo.captureDay')
    .orderBy('photo.captureDay', 'desc')
    .select((eb) => ['photo.captureDay as day', eb.fn.countAll<number>().as('photos')])
    .execute();
  return {
    days: rows.flatMap(({ day, photos }) => (day === null ? [] : [{ day, photos }])),
    undated: rows.find(({ day }) => day === null)?.photos ?? 0,
    place: place === undefined ? null : await readPlace(db, house, filter, place),
  };
}

/** Where in its day a photo stands, among those that fit. */
async function readPlace(
  db: Db,
  house: string,
  filter: PhotoFilter,
  photo: string,
): Promise<PhotoCounts['place']> {
  const found = await matchFilter(db, house, filter)
    .where('photo.id', '=', photo)
    .select('photo.captureDay as day')
    .executeTakeFirst();
  if (!found) return null;
  const key = RISING.capture;
  const { position } = await matchFilter(db, house, filter)
    .where('photo.captureDay', found.day === null ? 'is' : '=', found.day)
    .where(sql<boolean>`(${key}) < (select ${key} from photo where photo.id = ${photo})`)
    .select((eb) => eb.fn.countAll<number>().as('position'))
    .executeTakeFirstOrThrow();
  return { day: found.day, position };
}

export async function readPhotoOrder(db: Db, house: string, filter: PhotoFilter): Promise<string[]> {
  const rows = await matchFilter(db, house, filter).select('photo.id').orderBy(ORDERED_BY.capture).execute();
  return rows.map(({ id }) => id);
}

export async function readAdders(db: Db, house: string): Promise<(Person & { photos: number })[]> {
  const latest = sql<string>`(array_agg(added_by ->> 'name' order by added_at desc))[1]`;
  return db
    .selectFrom('photo')
    .where('houseId', '=', house)
    .where('addedBy', 'is not', null)
    .groupBy(ADDER)
    .select((eb) => [ADDER.as('id'), latest.as('name'), eb.fn.countAll<number>().as('photos')])
    .orderBy('photos', 'desc')
    .orderBy('id')
    .execute();
}

const ADDER = sql<string>`(photo.added_by ->> 'id')`;

const ON_PHOTO = sql<boolean>`tag.photo_id = photo.id`;

function matchFilter(db: Db, house: string, filter: PhotoFilter) {
  const { day, mark, stage, by, dated, untagged } = filter;
  const standing = db
    .selectFrom('tag')
    .select('photoId')
    .where('houseId', '=', house)
    .where('state', '=', 'standing');
  let query = db.selectFrom('photo').where('photo.houseId', '=', house);
  if (day !== undefined) query = query.where('photo.captureDay', '=', day);
  if (dated !== undefined) query = query.where('photo.captureDay', dated ? 'is not' : 'is', null);
  if (by !== undefined) query = query.where(ADDER, '=', by);
  if (untagged) query = query.where((eb) => eb.not(eb.exists(standing.where(ON_PHOTO))));
  if (mark === undefined && stage === undefined) return query;
  // Both of one and the same tag: い三 when it was pegged, not い三 beside something pegged.
  let tags = standing;
  if (mark !== undefined) tags = tags.where('mark', '=', mark);
  if (stage !== undefined) tags = tags.where('stage', '=', stage);
  return query.where('photo.id', 'in', tags);
}
