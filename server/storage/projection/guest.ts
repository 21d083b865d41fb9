import { jsonOrNull } from './json.ts';
import type { Projector } from './projector.ts';

export const projectGuest: Projector<'guest.admitted' | 'guest.ended'> = {
  'guest.admitted': async (tx, { house, at, by, payload: { guest, shows, label, until } }) => {
    await tx
      .insertInto('guest')
      .values({
        id: guest,
        houseId: house,
        coveringId: 'covering' in shows ? shows.covering : null,
        mark: 'mark' in shows ? shows.mark : null,
        label,
        until,
        admittedAt: at,
        admittedBy: jsonOrNull(by),
        endedAt: null,
        endedBy: null,
        endReason: null,
      })
      .execute();
  },

  'guest.ended': async (tx, { at, by, payload: { guest, reason } }) => {
    await tx
      .updateTable('guest')
      .set({ endedAt: at, endedBy: jsonOrNull(by), endReason: reason })
      .where('id', '=', guest)
      .execute();
  },
};
