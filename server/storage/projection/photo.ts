import type { Readings } from '#domain/contract/shapes';
import { doubtCapture, doubtOf } from '#domain/photo/capture-doubt';
import { decideCapture } from '#domain/photo/capture-time';
import type { Tx } from '../tx.ts';
import { readDating, type Dating } from '../queries/houses.ts';
import { jsonOrNull } from './json.ts';
import type { Projector } from './projector.ts';

export const projectPhoto: Projector<'photo.added'> = {
  'photo.added': async (tx, { house, at, by, payload: { photo, readings, ...facts } }) => {
    await tx
      .insertInto('photo')
      .values({
        id: photo,
        houseId: house,
        ...facts,
        readings: JSON.stringify(readings),
        addedAt: at,
        addedBy: jsonOrNull(by),
        ...captureColumns(readings, at, await readDating(tx, house)),
      })
      .execute();
  },
};

/** A house that declares another zone or first day gets the capture time of every photo decided anew. */
export async function datePhotosAgain(tx: Tx, house: string, dating: Dating): Promise<void> {
  const photos = await tx
    .selectFrom('photo')
    .select(['id', 'readings', 'addedAt'])
    .where('houseId', '=', house)
    .execute();
  for (const { id, readings, addedAt } of photos) {
    const columns = captureColumns(readings, addedAt.toISOString(), dating);
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
