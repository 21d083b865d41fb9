import { cameraKey } from '#domain/photo/camera-key';
import { jsonOrNull } from './json.ts';
import { datePhotosAgain } from './photo.ts';
import type { Projector } from './projector.ts';

/** A mark or its end dates the photos of that camera anew, and no others. */
export const projectClock: Projector<'clock.marked' | 'clock.withdrawn'> = {
  'clock.marked': async (tx, { house, seq, at, by, payload }) => {
    const camera = cameraKey(payload.camera);
    if (camera === null) return;
    await tx
      .insertInto('clockMark')
      .values({
        id: payload.mark,
        houseId: house,
        photoId: payload.photo,
        camera,
        shownWall: payload.shown.wallTime,
        shownOffset: payload.shown.offsetMinutes,
        trueTime: payload.trueTime,
        withinS: payload.withinS,
        note: payload.note,
        seq,
        saidAt: at,
        saidBy: jsonOrNull(by),
      })
      .execute();
    await datePhotosAgain(tx, house, { camera });
  },

  'clock.withdrawn': async (tx, { house, at, payload }) => {
    const camera = cameraKey(payload.camera);
    await tx.updateTable('clockMark').set({ withdrawnAt: at }).where('id', '=', payload.mark).execute();
    if (camera !== null) await datePhotosAgain(tx, house, { camera });
  },
};
