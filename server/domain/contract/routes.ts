import type { z } from 'zod';
import { CALENDAR_ROUTES } from './routes/calendar.ts';
import { CLOCK_ROUTES } from './routes/clock.ts';
import { ARCHIVE_ROUTES } from './routes/archive.ts';
import { FRAME_ROUTES } from './routes/frame.ts';
import { COVERING_ROUTES } from './routes/coverings.ts';
import { FINDING_ROUTES } from './routes/findings.ts';
import { HOLD_ROUTES } from './routes/holds.ts';
import { GUEST_ROUTES } from './routes/guests.ts';
import { HOUSE_ROUTES } from './routes/houses.ts';
import { JOURNAL_ROUTES } from './routes/journal.ts';
import { MEMBER_ROUTES } from './routes/members.ts';
import { PROTECTION_ROUTES } from './routes/protection.ts';
import { PHOTO_ROUTES } from './routes/photos.ts';
import { SESSION_ROUTES } from './routes/session.ts';
import { SITE_ROUTES } from './routes/site.ts';
import { STAMP_ROUTES } from './routes/stamps.ts';
import { TERM_ROUTES } from './routes/terms.ts';
import type { Route } from './routes/route.ts';

export type { Route };

/** The whole API: the server implements it, the client calls it, OpenAPI is made of it. */
export const ROUTES = {
  ...SESSION_ROUTES,
  ...HOUSE_ROUTES,
  ...GUEST_ROUTES,
  ...MEMBER_ROUTES,
  ...PHOTO_ROUTES,
  ...CLOCK_ROUTES,
  ...FRAME_ROUTES,
  ...COVERING_ROUTES,
  ...HOLD_ROUTES,
  ...CALENDAR_ROUTES,
  ...PROTECTION_ROUTES,
  ...FINDING_ROUTES,
  ...JOURNAL_ROUTES,
  ...SITE_ROUTES,
  ...TERM_ROUTES,
  ...ARCHIVE_ROUTES,
  ...STAMP_ROUTES,
} as const satisfies Record<string, Route>;

export type RouteName = keyof typeof ROUTES;
type Parameters<Path extends string> = Path extends `${string}{${infer Name}}${infer Rest}`
  ? Name | Parameters<Rest>
  : never;
export type PathParameters<N extends RouteName> = Record<Parameters<(typeof ROUTES)[N]['path']>, string>;
type Shape<N extends RouteName, K extends string> =
  (typeof ROUTES)[N] extends Record<K, infer T extends z.ZodType> ? T : never;
export type Query<N extends RouteName> = z.output<Shape<N, 'query'>>;
export type QueryInput<N extends RouteName> = z.input<Shape<N, 'query'>>;
export type Body<N extends RouteName> = z.output<Shape<N, 'body'>>;
export type BodyInput<N extends RouteName> = z.input<Shape<N, 'body'>>;
export type Answer<N extends RouteName> = z.output<Shape<N, 'answer'>>;
