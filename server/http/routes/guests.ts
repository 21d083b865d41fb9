import type { Request } from 'express';
import type { Context } from '../../services/context.ts';
import { readGuestPage, readGuestPicture } from '../../services/guest-page.ts';
import { admitGuest, endGuest, listGuests } from '../../services/guests.ts';
import type { GuessGuard } from '../guess-guard.ts';
import type { Handlers } from '../implement.ts';

export function guestHandlers(context: Context, guard: GuessGuard): Handlers {
  const bySecret = <T>(req: Request, secret: string, work: () => Promise<T>) =>
    guard.secret(`guests ${req.ip}`, secret, 'not-found', work);
  return {
    listGuests: async ({ house }) => ({ guests: await listGuests(context, house) }),
    admitGuest: ({ account, house, body }) => admitGuest(context, account, house, body),
    endGuest: async ({ account, house, params: { guest }, query }) => {
      await endGuest(context, account, { house, guest }, query.reason);
      return undefined;
    },
    readGuestPage: ({ req, params: { secret } }) =>
      bySecret(req, secret, () => readGuestPage(context, secret)),
    guestPicture: async ({ req, res, params: { secret, photo }, query: { tag } }) => {
      const jpeg = await bySecret(req, secret, () => readGuestPicture(context, secret, { photo, tag }));
      res.type('image/jpeg').send(Buffer.from(jpeg));
      return undefined;
    },
  };
}
