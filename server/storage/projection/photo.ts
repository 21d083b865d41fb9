import type { PhotoFacts, Readings } from '#domain/contract/shapes';
import { doubtCapture, doubtOf } from '#domain/photo/capture-doubt';
import { decideCapture } from '#domain/photo/capture-time';
import { placeOf } from '#domain/place/place-of';
import type { Tx } from '../tx.ts';
import { readDating, type Dating } from '../queries/houses.ts';
import { jsonOrNull } from './json.ts';
import type { Projector } from './projector.ts';

export const projectPhoto: Projector<'photo.added' | 'photo.position-added'> = {
  'photo.added': async (tx, { house, at, by, payload: { photo, readings, ...facts } }) => {
    const dating = await readDating(tx, house);
    const capture = captureColumns(readings, at, dating);
    await tx
      .insertInto('photo')
      .values({
        id: photo,
        houseId: house,
        ...facts,
        readings: JSON.stringify(readings),
        addedAt: at,
        addedBy: jsonOrNull(by),
        ...capture,
        ...placeColumns({ readings, ...facts }, capture.capturedAt ?? at, dating),
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
};

/** A house that declares another zone, first day or site gets time and place of every photo decided anew. */
export async function datePhotosAgain(tx: Tx, house: string, dating: Dating): Promise<void> {
  const photos = await tx
    .selectFrom('photo')
    .select(['id', 'readings', 'addedAt', 'width', 'height'])
    .where('houseId', '=', house)
    .execute();
  for (const { id, addedAt, ...facts } of photos) {
    const at = addedAt.toISOString();
    const capture = captureColumns(facts.readings, at, dating);
    const columns = { ...capture, ...placeColumns(facts, capture.capturedAt ?? at, dating) };
    await tx.updateTable('photo').set(columns).where('id', '=', id).execute();
  }
}

function captureColumns(readings: Readings, addedAt: string, dating: Dating) {
  const capture = doubtCapture(decideCapture(readings, dating.zone), { ...dating, addedAt });
  const dated = capture.state === 'dated';
  return {
    capture: JSON.stringify(capture),
    capturedAt: dated ? capture.instant : null,
    captureDay: dated ? capture.day : null,
    doubt: doubtOf(capture),
  };
}

function placeColumns(
  { readings, ...size }: Pick<PhotoFacts, 'readings' | 'width' | 'height'>,
  instant: string,
  { site }: Dating,
) {
  return { place: JSON.stringify(placeOf(readings, size, site, instant)) };
}
