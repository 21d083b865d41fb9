import { z } from 'zod';
import { Id, Instant, line } from '../shapes.ts';
import { AccountView, LinkView, SessionView, TokenView } from '../views.ts';
import { route, type Route } from './route.ts';

const password = z.string().min(10).max(200);
const email = z.email().max(200);

const flag = z.enum(['0', '1']).default('0');

/** Health, sign-in, passwords, one-time links, access tokens. */
export const SESSION_ROUTES = {
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
  changePassword: route({
    method: 'PUT',
    path: '/session/password',
    summary: 'Change your password. All other sessions end, and this one goes on under a new cookie.',
    access: 'account',
    body: z.strictObject({
      present: z.string().min(1).max(200),
      password,
      tokens: z.boolean().default(false).meta({ description: 'End the access tokens as well.' }),
    }),
    status: 200,
    answer: z.object({ account: AccountView }),
  }),
  listSessions: route({
    method: 'GET',
    path: '/sessions',
    summary: 'Where you are signed in.',
    access: 'account',
    status: 200,
    answer: z.object({ sessions: z.array(SessionView) }),
  }),
  endSessions: route({
    method: 'DELETE',
    path: '/sessions',
    summary: 'Sign out everywhere and end your calendar addresses; tokens=1 ends the access tokens as well.',
    access: 'account',
    query: z.object({ tokens: flag }),
    status: 204,
  }),
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
    answer: z.object({
      account: AccountView,
      house: Id.nullable().meta({ description: 'The house that the link gave a role in.' }),
    }),
  }),
  renewPassword: route({
    method: 'POST',
    path: '/links/{link}/password',
    summary:
      'Set a new password with a one-time link. All sessions, calendar addresses and access tokens of the account end.',
    access: 'anyone',
    body: z.strictObject({ password }),
    status: 200,
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
} as const satisfies Record<string, Route>;
