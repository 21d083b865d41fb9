import { z } from 'zod';
import { CalendarLangShape, CalendarLinkView } from '../calendar.ts';
import { route, type Route } from './route.ts';

/** Closings as a calendar, behind a secret address that each person makes for a house. */
export const CALENDAR_ROUTES = {
  readCalendar: route({
    method: 'GET',
    path: '/calendar/{calendar}',
    summary: 'The closings of a house as iCalendar (RFC 5545), for whoever has the secret.',
    access: 'anyone',
    status: 200,
    produces: ['text/calendar'],
  }),
  readCalendarLink: route({
    method: 'GET',
    path: '/houses/{house}/calendar-link',
    summary: 'Whether you have a calendar link for this house. Its secret is not shown again.',
    access: 'read',
    status: 200,
    answer: z.object({ link: CalendarLinkView.nullable() }),
  }),
  makeCalendarLink: route({
    method: 'POST',
    path: '/houses/{house}/calendar-link',
    summary: 'Make your calendar link for this house; its secret is shown once, and one made before ends.',
    access: 'read',
    body: z.strictObject({ lang: CalendarLangShape }),
    status: 201,
    answer: z.object({ link: CalendarLinkView, secret: z.string() }),
  }),
  endCalendarLink: route({
    method: 'DELETE',
    path: '/houses/{house}/calendar-link',
    summary: 'End your calendar link for this house.',
    access: 'read',
    status: 204,
  }),
} as const satisfies Record<string, Route>;
