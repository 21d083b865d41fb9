import { z } from 'zod';
import {
  AccountView,
  ClosingReportView,
  CoveringView,
  DaySummaryView,
  DayView,
  HouseView,
  LedgerEntryView,
  LinkView,
  MemberHistoryView,
  MemberView,
  PersonInHouseView,
  PhotoDetailView,
  PhotoView,
  ScheduleImportView,
  SchedulePreviewView,
  TagView,
  TokenView,
  UploadOutcome,
} from './views.ts';
import {
  CoveringFacts,
  Day,
  HouseChanges,
  HouseFacts,
  Id,
  Instant,
  MemberFacts,
  RoleShape,
  Sha256,
  TagFacts,
  line,
  paragraph,
} from './shapes.ts';

/** One route of the API: the server implements it, the client calls it, OpenAPI is made of it. */
export interface Route {
  readonly method: 'GET' | 'POST' | 'PUT' | 'PATCH' | 'DELETE';
  /** Below /api/v1, with {parameters}. */
  readonly path: string;
  readonly summary: string;
  /** 'anyone' needs no account, 'account' any, 'house' a role in the house of the path, 'owner' that role. */
  readonly access: 'anyone' | 'account' | 'house' | 'owner';
  readonly query?: z.ZodObject;
  /** JSON body; routes with another body say its media types in `consumes`. */
  readonly body?: z.ZodType;
  readonly consumes?: readonly string[];
  readonly status: 200 | 201 | 204;
  /** JSON answer; routes with another answer say its media types in `produces`. */
  readonly answer?: z.ZodType;
  readonly produces?: readonly string[];
}

const route = <const R extends Route>(r: R): R => r;

const password = z.string().min(10).max(200);
const email = z.email().max(200);
const flag = z.enum(['0', '1']).default('0');

export const ROUTES = {
  health: route({
    method: 'GET',
    path: '/health',
    summary: 'Whether the server and its database answer.',
    access: 'anyone',
    status: 200,
    answer: z.object({ status: z.literal('ok'), version: z.string() }),
  }),
  openapi: route({
    method: 'GET',
    path: '/openapi.json',
    summary: 'This description.',
    access: 'anyone',
    status: 200,
    answer: z.record(z.string(), z.unknown()),
  }),

  readSession: route({
    method: 'GET',
    path: '/session',
    summary: 'Who is signed in.',
    access: 'anyone',
    status: 200,
    answer: z.object({ account: AccountView.nullable() }),
  }),
  signIn: route({
    method: 'POST',
    path: '/session',
    summary: 'Sign in with e-mail and password.',
    access: 'anyone',
    body: z.strictObject({ email, password: z.string().min(1).max(200) }),
    status: 200,
    answer: z.object({ account: AccountView }),
  }),
  signOut: route({ method: 'DELETE', path: '/session', summary: 'Sign out.', access: 'anyone', status: 204 }),
  readLink: route({
    method: 'GET',
    path: '/links/{link}',
    summary: 'What a one-time link is for.',
    access: 'anyone',
    status: 200,
    answer: LinkView,
  }),
  useLink: route({
    method: 'POST',
    path: '/links/{link}',
    summary: 'Make an account with a one-time link.',
    access: 'anyone',
    body: z.strictObject({ name: line(100), email, password }),
    status: 201,
    answer: z.object({ account: AccountView }),
  }),
  listTokens: route({
    method: 'GET',
    path: '/tokens',
    summary: 'Your access tokens for scripts.',
    access: 'account',
    status: 200,
    answer: z.object({ tokens: z.array(TokenView) }),
  }),
  createToken: route({
    method: 'POST',
    path: '/tokens',
    summary: 'Make an access token; its secret is shown once.',
    access: 'account',
    body: z.strictObject({ id: Id, name: line(100), expiresAt: Instant.nullable().default(null) }),
    status: 201,
    answer: z.object({ token: TokenView, secret: z.string() }),
  }),
  deleteToken: route({
    method: 'DELETE',
    path: '/tokens/{token}',
    summary: 'End an access token.',
    access: 'account',
    status: 204,
  }),

  createHouse: route({
    method: 'POST',
    path: '/houses',
    summary: 'Open the record of a house.',
    access: 'account',
    body: HouseFacts.extend({ id: Id }),
    status: 201,
    answer: HouseView,
  }),
  listHouses: route({
    method: 'GET',
    path: '/houses',
    summary: 'The houses you work on.',
    access: 'account',
    status: 200,
    answer: z.object({ houses: z.array(HouseView) }),
  }),
  readHouse: route({
    method: 'GET',
    path: '/houses/{house}',
    summary: 'One house.',
    access: 'house',
    status: 200,
    answer: HouseView,
  }),
  changeHouse: route({
    method: 'PATCH',
    path: '/houses/{house}',
    summary: 'Change name, zone, first day or site.',
    access: 'owner',
    body: HouseChanges,
    status: 200,
    answer: HouseView,
  }),
  houseEvents: route({
    method: 'GET',
    path: '/houses/{house}/events',
    summary: 'Server-sent events: statements and finished pictures.',
    access: 'house',
    status: 200,
    produces: ['text/event-stream'],
  }),
  listPeople: route({
    method: 'GET',
    path: '/houses/{house}/people',
    summary: 'Who works on the house.',
    access: 'house',
    status: 200,
    answer: z.object({ people: z.array(PersonInHouseView) }),
  }),
  addPerson: route({
    method: 'POST',
    path: '/houses/{house}/people',
    summary: 'Give a person a role; without an account yet, a one-time link is returned to hand on.',
    access: 'owner',
    body: z.strictObject({ email, role: RoleShape }),
    status: 201,
    answer: z.object({ person: PersonInHouseView.nullable(), link: z.string().nullable() }),
  }),
  removePerson: route({
    method: 'DELETE',
    path: '/houses/{house}/people/{person}',
    summary: 'Take a role back.',
    access: 'owner',
    status: 204,
  }),

  importSchedule: route({
    method: 'POST',
    path: '/houses/{house}/schedule',
    summary: 'Preview (preview=1) or import a member schedule.',
    access: 'house',
    query: z.object({
      preview: flag,
      fileName: z.string().max(255).default('schedule'),
      mapping: z
        .string()
        .max(4000)
        .optional()
        .meta({ description: 'JSON: column index → field or "" (keep under its own name).' }),
      missing: z.enum(['retire', 'keep']).default('keep').meta({
        description: 'What becomes of members that the table does not name; retire only by a whole schedule.',
      }),
      badRows: z.enum(['refuse', 'skip']).default('refuse'),
      agree: Sha256.optional(),
    }),
    consumes: ['text/csv', 'application/vnd.openxmlformats-officedocument.spreadsheetml.sheet'],
    status: 200,
    answer: z.union([SchedulePreviewView, ScheduleImportView]),
  }),
  listMembers: route({
    method: 'GET',
    path: '/houses/{house}/members',
    summary: 'All members of the schedule.',
    access: 'house',
    status: 200,
    answer: z.object({ members: z.array(MemberView) }),
  }),
  readMember: route({
    method: 'GET',
    path: '/houses/{house}/members/{mark}',
    summary: 'History of a member.',
    access: 'house',
    status: 200,
    answer: MemberHistoryView,
  }),
  putMember: route({
    method: 'PUT',
    path: '/houses/{house}/members/{mark}',
    summary: 'Enter or change a member by hand.',
    access: 'house',
    body: MemberFacts.omit({ mark: true }),
    status: 200,
    answer: MemberView,
  }),
  deleteMember: route({
    method: 'DELETE',
    path: '/houses/{house}/members/{mark}',
    summary: 'Retire a member; one that nothing refers to is removed.',
    access: 'house',
    status: 200,
    answer: z.object({ outcome: z.enum(['retired', 'removed']) }),
  }),

  addPhotos: route({
    method: 'POST',
    path: '/houses/{house}/photos',
    summary: 'Add photos (multipart, field photos).',
    access: 'house',
    consumes: ['multipart/form-data'],
    status: 201,
    answer: z.object({ results: z.array(UploadOutcome) }),
  }),
  listPhotos: route({
    method: 'GET',
    path: '/houses/{house}/photos',
    summary: 'Photos in order of capture or the newest day first; undated ones last.',
    access: 'house',
    query: z.object({
      order: z.enum(['capture', 'newest-day']).default('capture').meta({
        description: 'newest-day: the last day first, each day in order of capture.',
      }),
      dated: z
        .enum(['0', '1'])
        .optional()
        .meta({ description: 'Only photos with (1) or without (0) a capture time.' }),
      day: Day.optional(),
      mark: z.string().max(400).optional(),
      untagged: flag,
      after: Id.optional(),
      limit: z.coerce.number().int().min(1).max(1000).default(200),
    }),
    status: 200,
    answer: z.object({ photos: z.array(PhotoView), total: z.int(), next: Id.nullable() }),
  }),
  readPhoto: route({
    method: 'GET',
    path: '/photos/{photo}',
    summary: 'One photo with all its tags.',
    access: 'house',
    status: 200,
    answer: PhotoDetailView,
  }),
  photoOriginal: route({
    method: 'GET',
    path: '/photos/{photo}/original',
    summary: 'The file as it was uploaded.',
    access: 'house',
    status: 200,
    produces: ['image/*'],
  }),
  photoPreview: route({
    method: 'GET',
    path: '/photos/{photo}/preview',
    summary: 'Upright, 1600 px.',
    access: 'house',
    status: 200,
    produces: ['image/jpeg'],
  }),
  photoThumb: route({
    method: 'GET',
    path: '/photos/{photo}/thumb',
    summary: 'Upright, 320 px.',
    access: 'house',
    status: 200,
    produces: ['image/jpeg'],
  }),
  photoCrop: route({
    method: 'GET',
    path: '/photos/{photo}/crop',
    summary: 'A part of the original, upright. xywh=percent:x,y,w,h (Media Fragments).',
    access: 'house',
    query: z.object({
      xywh: z.string().max(100),
      width: z.coerce.number().int().min(16).max(2000).default(480),
    }),
    status: 200,
    produces: ['image/jpeg'],
  }),

  placeTag: route({
    method: 'POST',
    path: '/photos/{photo}/tags',
    summary: 'State what a region shows.',
    access: 'house',
    body: TagFacts.extend({ id: Id }),
    status: 201,
    answer: TagView,
  }),
  supersedeTag: route({
    method: 'PUT',
    path: '/tags/{tag}',
    summary: 'Replace a tag; the old one stays on record.',
    access: 'house',
    body: TagFacts.extend({ id: Id }),
    status: 200,
    answer: TagView,
  }),
  withdrawTag: route({
    method: 'DELETE',
    path: '/tags/{tag}',
    summary: 'Withdraw a tag; it stays on record as withdrawn.',
    access: 'house',
    query: z.object({ reason: z.string().max(1000).default('') }),
    status: 200,
    answer: TagView,
  }),

  planCovering: route({
    method: 'POST',
    path: '/houses/{house}/coverings',
    summary: 'Plan a covering.',
    access: 'house',
    body: CoveringFacts.extend({ id: Id }),
    status: 201,
    answer: CoveringView,
  }),
  listCoverings: route({
    method: 'GET',
    path: '/houses/{house}/coverings',
    summary: 'All coverings.',
    access: 'house',
    status: 200,
    answer: z.object({ coverings: z.array(CoveringView) }),
  }),
  changeCovering: route({
    method: 'PUT',
    path: '/coverings/{covering}',
    summary: 'Change a covering that is not closed.',
    access: 'house',
    body: CoveringFacts,
    status: 200,
    answer: CoveringView,
  }),
  closeCovering: route({
    method: 'POST',
    path: '/coverings/{covering}/close',
    summary: 'Say that a covering has closed.',
    access: 'house',
    body: z.strictObject({
      closedAt: Instant.nullable().default(null).meta({ description: 'null: now.' }),
      note: paragraph(2000).default(''),
    }),
    status: 200,
    answer: CoveringView,
  }),
  reopenCovering: route({
    method: 'POST',
    path: '/coverings/{covering}/reopen',
    summary: 'Take back a closing that was said by mistake, or after the covering was opened up.',
    access: 'house',
    body: z.strictObject({ reason: line(1000) }),
    status: 200,
    answer: CoveringView,
  }),

  closingReport: route({
    method: 'GET',
    path: '/houses/{house}/closing-report',
    summary: 'What is hidden, what is on record, what is missing.',
    access: 'house',
    query: z.object({ format: z.enum(['json', 'csv']).optional(), lang: z.enum(['en', 'ja']).default('en') }),
    status: 200,
    answer: ClosingReportView,
    produces: ['text/csv'],
  }),
  listDays: route({
    method: 'GET',
    path: '/houses/{house}/days',
    summary: 'The days on which anything was photographed or said.',
    access: 'house',
    status: 200,
    answer: z.object({ days: z.array(DaySummaryView) }),
  }),
  readDay: route({
    method: 'GET',
    path: '/houses/{house}/days/{date}',
    summary: 'One day.',
    access: 'house',
    status: 200,
    answer: DayView,
  }),
  writeNote: route({
    method: 'PUT',
    path: '/houses/{house}/days/{date}/note',
    summary: 'Write your note of a day; what it said before stays in the ledger.',
    access: 'house',
    body: z.strictObject({ text: paragraph(20_000) }),
    status: 200,
    answer: DayView,
  }),
  readLedger: route({
    method: 'GET',
    path: '/houses/{house}/ledger',
    summary: 'All that was said, in order, with hashes.',
    access: 'house',
    query: z.object({
      from: z.coerce.number().int().min(0).default(0),
      limit: z.coerce.number().int().min(1).max(1000).default(200),
    }),
    status: 200,
    answer: z.object({ entries: z.array(LedgerEntryView), size: z.int(), head: Sha256 }),
  }),
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
