import { z } from 'zod';
import { GuestPageView, GuestRequest, GuestView } from '../guests.ts';
import { Id } from '../shapes.ts';
import { route, type Route } from './route.ts';

/** Links by which somebody without an account reads one covering or one member. */
export const GUEST_ROUTES = {
  listGuests: route({
    method: 'GET',
    path: '/houses/{house}/guests',
    summary: 'The guest links that can be used.',
    access: 'rule',
    status: 200,
    answer: z.object({ guests: z.array(GuestView) }),
  }),
  admitGuest: route({
    method: 'POST',
    path: '/houses/{house}/guests',
    summary:
      'Make a guest link; its secret is shown once. Sent again, it makes another secret for the same guest.',
    access: 'rule',
    body: GuestRequest,
    status: 201,
    answer: z.object({ guest: GuestView, secret: z.string() }),
  }),
  endGuest: route({
    method: 'DELETE',
    path: '/houses/{house}/guests/{guest}',
    summary: 'End a guest link at once.',
    access: 'rule',
    query: z.object({ reason: z.string().max(1000).default('') }),
    status: 204,
  }),
  readGuestPage: route({
    method: 'GET',
    path: '/guest/{secret}',
    summary: 'What a guest link shows. A link that is wrong, too old or ended is as if it had never been.',
    access: 'anyone',
    status: 200,
    answer: GuestPageView,
  }),
  guestPicture: route({
    method: 'GET',
    path: '/guest/{secret}/photos/{photo}/picture',
    summary: 'A picture that the page of the guest shows: around the region of a tag, or the whole of it.',
    access: 'anyone',
    query: z.object({ tag: Id.optional() }),
    status: 200,
    produces: ['image/jpeg'],
  }),
} as const satisfies Record<string, Route>;
