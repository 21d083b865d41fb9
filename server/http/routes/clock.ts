import { listCameras, markClock, withdrawClockMark } from '../../services/clock.ts';
import type { Context } from '../../services/context.ts';
import { datePhoto, withdrawDate } from '../../services/date-photo.ts';
import type { Handlers } from '../implement.ts';

export function clockHandlers(context: Context): Handlers {
  return {
    markClock: ({ account, house, params, body: { id, ...facts } }) =>
      markClock(context, account, { house, photo: params.photo, mark: id }, facts),
    withdrawClockMark: async ({ account, house, params, query }) => {
      await withdrawClockMark(context, account, { house, mark: params.clockMark }, query.reason);
      return undefined;
    },
    listCameras: ({ house }) => listCameras(context, house),
    datePhoto: ({ account, house, params, body }) =>
      datePhoto(context, account, { house, photo: params.photo }, body),
    withdrawDate: ({ account, house, params, query }) =>
      withdrawDate(context, account, { house, photo: params.photo }, query.reason),
  };
}
