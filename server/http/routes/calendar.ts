import { makeCalendarLink, readCalendar } from '../../services/calendar.ts';
import type { Context } from '../../services/context.ts';
import type { GuessGuard } from '../guess-guard.ts';
import type { Handlers } from '../implement.ts';

/** `origin`: the address that people type; null where only the request tells it. */
export function calendarHandlers(context: Context, guard: GuessGuard, origin: string | null): Handlers {
  const { calendars } = context;
  return {
    readCalendar: async ({ req, res, params }) => {
      const own = origin ?? `${req.protocol}://${req.get('host') ?? ''}`;
      const text = await guard.secret(`calendar ${req.ip}`, params.calendar, 'not-found', () =>
        readCalendar(context, params.calendar, own),
      );
      res.setHeader('content-disposition', 'attachment; filename="closings.ics"');
      res.type('text/calendar').send(text);
      return undefined;
    },
    readCalendarLink: async ({ account, house }) => ({ link: await calendars.link(house, account.id) }),
    makeCalendarLink: ({ account, house, body }) => makeCalendarLink(context, account, house, body.lang),
    endCalendarLink: async ({ account, house }) => {
      await calendars.endLink(house, account.id);
      return undefined;
    },
  };
}
