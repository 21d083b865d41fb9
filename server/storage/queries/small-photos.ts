import { sql } from 'kysely';
import type { SmallPhotoView } from '#domain/contract/small-photo';
import type { CaptureDoubt } from '#domain/photo/capture-doubts';
import type { Db } from '../open-database.ts';

export interface PhotoOfDay {
  readonly day: string;
  readonly doubt: CaptureDoubt | null;
  readonly photo: SmallPhotoView;
}

/** The first `each` photos of each of these days in order of capture; those of impossible date, or the others. */
export async function smallPhotos(
  db: Db,
  house: string,
  days: readonly string[],
  { each, doubted }: { each: number; doubted: boolean },
): Promise<PhotoOfDay[]> {
  if (days.length === 0) return [];
  const place = sql<number>`row_number() over (partition by photo.capture_day, photo.doubt
    order by photo.captured_at, photo.id)`;
  const numbered = db
    .selectFrom('photo')
    .where('houseId', '=', house)
    .where('captureDay', 'in', days)
    .where('doubt', doubted ? 'is not' : 'is', null)
    .select(['photo.id', place.as('place')]);
  const shown = db.selectFrom(numbered.as('numbered')).where('numbered.place', '<=', each);
  const ids = (await shown.select('numbered.id').execute()).map(({ id }) => id);
  return ids.length === 0 ? [] : readSmall(db, ids);
}

/** These photos, in order of capture. */
export async function smallPhotosById(db: Db, photos: readonly string[]): Promise<SmallPhotoView[]> {
  if (photos.length === 0) return [];
  return (await readSmall(db, photos)).map(({ photo }) => photo);
}

async function readSmall(db: Db, photos: readonly string[]): Promise<PhotoOfDay[]> {
  const rows = await db
    .selectFrom('photo')
    .leftJoin('picture', 'picture.photoId', 'photo.id')
    .where('photo.id', 'in', photos)
    .select(['photo.id', 'photo.fileName', 'photo.width', 'photo.height', 'photo.capturedAt'])
    .select(['photo.captureDay', 'photo.doubt', 'picture.state'])
    .select((eb) =>
      eb
        .selectFrom('tag')
        .select(eb.fn.countAll<number>().as('n'))
        .whereRef('tag.photoId', '=', 'photo.id')
        .where('tag.state', '=', 'standing')
        .as('tags'),
    )
    .orderBy('photo.capturedAt')
    .orderBy('photo.id')
    .execute();
  return rows.map(({ captureDay, doubt, capturedAt, state, tags, ...photo }) => ({
    day: captureDay ?? '',
    doubt,
    photo: {
      ...photo,
      pictures: state ?? 'pending',
      instant: capturedAt && capturedAt.toISOString(),
      tags: tags ?? 0,
    },
  }));
}
