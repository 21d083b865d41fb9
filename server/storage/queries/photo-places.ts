import { sql } from 'kysely';
import type { PhotoPlaceView } from '#domain/contract/views';
import type { Db } from '../open-database.ts';

export async function readPhotoPlaces(
  db: Db,
  house: string,
  day?: string,
): Promise<{ photos: PhotoPlaceView[]; without: number }> {
  let ofHouse = db.selectFrom('photo').where('houseId', '=', house);
  if (day !== undefined) ofHouse = ofHouse.where('captureDay', '=', day);
  const hasPosition = sql<boolean>`(photo.place -> 'position' <> 'null' or photo.device_position is not null)`;
  const rows = await ofHouse
    .where(hasPosition)
    .select(['id', 'fileName', 'captureDay', 'capturedAt', 'place', 'devicePosition'])
    .orderBy(sql`captured_at nulls last, id`)
    .execute();
  const { all } = await ofHouse.select((eb) => eb.fn.countAll<number>().as('all')).executeTakeFirstOrThrow();
  const photos = rows.map(({ id, fileName, captureDay, capturedAt, place, devicePosition }) => ({
    ...{ id, fileName, day: captureDay, capturedAt: capturedAt?.toISOString() ?? null },
    place: { ...place, device: devicePosition },
  }));
  return { photos, without: all - rows.length };
}
