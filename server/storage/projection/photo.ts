import type { PhotoFacts } from '#domain/contract/shapes';
import { cameraKey } from '#domain/photo/camera-key';
import { doubtOf } from '#domain/photo/capture-doubt';
import { datedBy, datePhoto, type DatingGrounds } from '#domain/photo/date-photo';
import { placeOf } from '#domain/place/place-of';
import type { Tx } from '../tx.ts';
import { readSaidMarks } from '../queries/clock.ts';
import { readDating, type Dating } from '../queries/houses.ts';
import { jsonOrNull } from './json.ts';
import type { Projector } from './projector.ts';

export const projectPhoto: Projector<
  'photo.added' | 'photo.position-added' | 'photo.dated' | 'photo.dating-withdrawn'
> = {
  'photo.added': async (tx, { house, at, by, payload: { photo, readings, ...facts } }) => {
    const camera = cameraKey(readings);
    const marks = camera === null ? [] : await readSaidMarks(tx, house, camera);
    const grounds = { ...(await readDating(tx, house)), addedAt: at, marks, byHand: null };
    await tx
      .insertInto('photo')
      .values({
        id: photo,
        houseId: house,
        ...facts,
        readings: JSON.stringify(readings),
        addedAt: at,
        addedBy: jsonOrNull(by),
        camera,
        ...decidedColumns({ readings, ...facts }, grounds),
      })
      .execute();
  },

  // The latest word holds: a second measurement corrects the first.
  'photo.position-added': async (tx, { by, payload: { photo, ...position } }) => {
    await tx
      .updateTable('photo')
      .set({ devicePosition: JSON.stringify({ ...position, by }) })
      .where('id', '=', photo)
      .execute();
  },

  'photo.dated': async (tx, { house, at, by, payload: { photo, ...said } }) => {
    const byHand = JSON.stringify({ ...said, by, at });
    await tx.updateTable('photo').set({ byHand }).where('id', '=', photo).execute();
    await datePhotosAgain(tx, house, { photo });
  },

  'photo.dating-withdrawn': async (tx, { house, payload: { photo } }) => {
    await tx.updateTable('photo').set({ byHand: null }).where('id', '=', photo).execute();
    await datePhotosAgain(tx, house, { photo });
  },
};

/** Decides anew when and where photos were taken: all of a house, those of one camera, or a single one. */
export async function datePhotosAgain(
  tx: Tx,
  house: string,
  only: { camera?: string; photo?: string } = {},
): Promise<void> {
  const dating = await readDating(tx, house);
  const marks = await readSaidMarks(tx, house, only.camera);
  let query = tx
    .selectFrom('photo')
    .select(['id', 'readings', 'addedAt', 'camera', 'byHand', 'width', 'height'])
    .where('houseId', '=', house);
  if (only.camera !== undefined) query = query.where('camera', '=', only.camera);
  if (only.photo !== undefined) query = query.where('id', '=', only.photo);
  for (const { id, addedAt, camera, byHand, ...facts } of await query.execute()) {
    const own = marks.filter((mark) => mark.camera === camera);
    const grounds = { ...dating, addedAt: addedAt.toISOString(), marks: own, byHand };
    await tx.updateTable('photo').set(decidedColumns(facts, grounds)).where('id', '=', id).execute();
  }
}

/** What follows from what the file says: when the photo was taken, and where. */
function decidedColumns(
  { readings, ...size }: Pick<PhotoFacts, 'readings' | 'width' | 'height'>,
  grounds: DatingGrounds & Dating,
) {
  const capture = datePhoto(readings, grounds);
  const dated = capture.state === 'dated';
  const capturedAt = dated ? capture.instant : null;
  return {
    capture: JSON.stringify(capture),
    capturedAt,
    captureDay: dated ? capture.day : null,
    uncertaintyS: dated ? capture.uncertaintyS : null,
    datedBy: datedBy(capture),
    doubt: doubtOf(capture),
    place: JSON.stringify(placeOf(readings, size, grounds.site, capturedAt ?? grounds.addedAt)),
  };
}
