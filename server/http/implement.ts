import express, { type Request, type RequestHandler, type Response, type Router } from 'express';
import type { z } from 'zod';
import { mayAct, type Act } from '#domain/contract/acts';
import {
  ROUTES,
  type Answer,
  type Body,
  type PathParameters,
  type Query,
  type Route,
  type RouteName,
} from '#domain/contract/routes';
import { Day } from '#domain/contract/shapes';
import type { AccountView } from '#domain/contract/views';
import type { Context } from '../services/context.ts';
import { Failure } from '../services/failure.ts';
import type { OwnedThing } from '../services/record-store.ts';
import { assertSameSite, identified } from './authentication.ts';
import { hurry } from './hurry.ts';

/** A request whose route has been authorised and whose parts have been parsed by its contract. */
export interface Asked<N extends RouteName> {
  readonly params: PathParameters<N>;
  readonly query: Query<N>;
  readonly body: Body<N>;
  /** Who asks. Routes that anyone may use read it by `identified` themselves. */
  readonly account: AccountView;
  /** The house that the request is about, for routes that ask for an act. */
  readonly house: string;
  readonly req: Request;
  readonly res: Response;
}

/** Answers with the value; undefined where the handler has answered itself or there is nothing to say. */
export type Handler<N extends RouteName> = (asked: Asked<N>) => Promise<Answer<N> | undefined>;
export type Handlers = { readonly [N in RouteName]?: Handler<N> };

const JSON_LIMIT = '8mb';
/** 8 MB over a network of 1 Mbit/s take a minute. */
const JSON_LIMIT_MS = 2 * 60_000;
const UUID = /^[0-9a-f]{8}-[0-9a-f]{4}-[0-9a-f]{4}-[0-9a-f]{4}-[0-9a-f]{12}$/;
const OWNED = [
  'house',
  'photo',
  'tag',
  'covering',
  'release',
  'protection',
  'clockMark',
] as const satisfies readonly OwnedThing[];

export function implement(router: Router, context: Context, handlers: Handlers): void {
  for (const name of Object.keys(handlers) as RouteName[]) register(router, context, name, handlers[name]);
}

function register<N extends RouteName>(
  router: Router,
  context: Context,
  name: N,
  handler: Handler<N> | undefined,
): void {
  if (!handler) return;
  const route: Route = ROUTES[name];
  const method = route.method.toLowerCase() as 'get' | 'post' | 'put' | 'patch' | 'delete';
  const chain: RequestHandler[] = [authorise(context, route)];
  if (route.body) chain.push(requireJson, express.json({ limit: JSON_LIMIT, strict: true }));
  chain.push(async (req, res) => {
    const answer = await handler(asked<N>(route, req, res));
    if (res.headersSent) return;
    if (answer === undefined) res.status(204).end();
    else res.status(route.status).json(answer);
  });
  router[method](expressPath(route.path), ...chain);
}

export function expressPath(path: string): string {
  return path.replace(/\{(\w+)\}/g, ':$1');
}

function authorise(context: Context, route: Route): RequestHandler {
  return async (req, res, next) => {
    if (route.method !== 'GET') assertSameSite(req);
    if (route.access === 'anyone') return next();
    const who = await identified(context, req);
    if (!who) throw new Failure('not-signed-in');
    checkParams(req);
    res.locals['account'] = who;
    if (route.access !== 'account')
      res.locals['house'] = await authoriseHouse(context, route.access, req, who);
    next();
  };
}

/** To people without a role in it, a house does not exist. */
async function authoriseHouse(context: Context, act: Act, req: Request, who: AccountView): Promise<string> {
  const thing = OWNED.find((name) => name in req.params) ?? 'house';
  const access = await context.store.read.access(thing, String(req.params[thing]), who.id);
  if (!access) throw new Failure('not-found', { what: thing });
  if (!mayAct(access.role, act)) throw new Failure('not-permitted', { act, role: access.role });
  return access.house;
}

function checkParams(req: Request): void {
  const { date } = req.params;
  for (const thing of [...OWNED, 'token', 'guest', 'invitation'])
    if (thing in req.params && !UUID.test(String(req.params[thing])))
      throw new Failure('not-found', { what: thing });
  if (date !== undefined && !Day.safeParse(date).success) throw new Failure('not-found', { what: 'day' });
}

const requireJson: RequestHandler = (req, _res, next) => {
  if (req.is('application/json')) {
    hurry(req, JSON_LIMIT_MS);
    return next();
  }
  throw new Failure('unsupported-media-type', { found: req.get('content-type') ?? 'a body without a type' });
};

function asked<N extends RouteName>(route: Route, req: Request, res: Response): Asked<N> {
  const { account, house } = res.locals as { account: AccountView; house: string };
  return {
    params: req.params as PathParameters<N>,
    query: (route.query ? parse(route.query, req.query, 'query') : {}) as Query<N>,
    body: (route.body ? parse(route.body, req.body, 'body') : undefined) as Body<N>,
    account,
    house,
    req,
    res,
  };
}

function parse(shape: z.ZodType, value: unknown, where: string): unknown {
  const parsed = shape.safeParse(value);
  if (parsed.success) return parsed.data;
  const errors = parsed.error.issues.slice(0, 50).map(({ path, message }) => ({
    path: [where, ...path].join('.'),
    message,
  }));
  throw new Failure('invalid-request', { count: parsed.error.issues.length }, errors);
}
