import type { Capture } from '#domain/contract/capture';
import type { Readings } from '#domain/contract/shapes';
import { decideCapture } from '#domain/photo/capture-time';
import type { Tx } from '../tx.ts';
import { readZone } from '../queries/houses.ts';
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
        ...captureColumns(readings, await readZone(tx, house)),
      })
      .execute();
  },
};

/** A house that declares another zone gets the capture time of every photo decided anew. */
export async function datePhotosAgain(tx: Tx, house: string, zone: string): Promise<void> {
  const photos = await tx
    .selectFrom('photo')
    .select(['id', 'readings'])
    .where('houseId', '=', house)
    .execute();
  for (const { id, readings } of photos)
    await tx.updateTable('photo').set(captureColumns(readings, zone)).where('id', '=', id).execute();
}

function captureColumns(readings: Readings, zone: string) {
  const capture: Capture = decideCapture(readings, zone);
  const dated = capture.state === 'dated';
  return {
    capture: JSON.stringify(capture),
    capturedAt: dated ? capture.instant : null,
    captureDay: dated ? capture.day : null,
  };
}
