import express, { type Express, type RequestHandler } from 'express';
import type { Logger } from 'pino';
import type { Context } from '../services/context.ts';
import { compressAnswers } from './compress.ts';
import type { EventHub } from './event-hub.ts';
import { GuessGuard } from './guess-guard.ts';
import { implement, type Handlers } from './implement.ts';
import { openApiDocument } from './openapi.ts';
import { notFound, problemHandler } from './problem.ts';
import { archiveHandlers } from './routes/archive.ts';
import { calendarHandlers } from './routes/calendar.ts';
import { clockHandlers } from './routes/clock.ts';
import { frameHandlers } from './routes/frame.ts';
import { siteHandlers } from './routes/site.ts';
import { coveringHandlers } from './routes/coverings.ts';
import { findingHandlers } from './routes/findings.ts';
import { holdHandlers } from './routes/holds.ts';
import { guestHandlers } from './routes/guests.ts';
import { houseHandlers } from './routes/houses.ts';
import { memberHandlers } from './routes/members.ts';
import { protectionHandlers } from './routes/protection.ts';
import { photoHandlers } from './routes/photos.ts';
import { sessionHandlers } from './routes/session.ts';
import { termHandlers } from './routes/terms.ts';
import { filesOnly, securityHeaders } from './security-headers.ts';
import { serveClient } from './serve-client.ts';
import { SignInGuard } from './sign-in-guard.ts';

export interface AppParts {
  readonly context: Context;
  readonly log: Logger;
  readonly hub: EventHub;
  readonly wakeJobs: () => void;
  readonly isHealthy: () => Promise<void>;
  readonly version: string;
  /** The built client; null where only the API is wanted. */
  readonly clientFolder: string | null;
  /** The file of the page that goes into every archive. */
  readonly checkPage: string;
  readonly secure: boolean;
  /** Beside those on this machine; see the configuration. */
  readonly proxies: readonly string[];
  /** The address that people type; null where only the request tells it. */
  readonly origin: string | null;
}

export const API = '/api/v1';

export function createApp(parts: AppParts): Express {
  const app = express();
  app.disable('x-powered-by');
  app.set('query parser', 'simple');
  // Only a proxy on this machine, and those that the configuration names, may say whom they speak for.
  app.set('trust proxy', ['loopback', ...parts.proxies]);
  app.use(securityHeaders(parts.secure));
  app.use(['/guest', '/link', `${API}/guest`, `${API}/links`], unlisted);
  app.use(API, api(parts));
  if (parts.clientFolder) app.use(serveClient(parts.clientFolder));
  app.use(notFound);
  app.use(problemHandler(parts.log));
  return app;
}

function api(parts: AppParts): express.Router {
  const { context, log, hub, wakeJobs, checkPage, origin } = parts;
  const router = express.Router();
  router.use((_req, res, next) => {
    res.setHeader('cache-control', 'no-store');
    next();
  });
  router.use(filesOnly);
  router.use(compressAnswers());
  const guard = new GuessGuard(context.now);
  const handlers: Handlers = {
    ...instanceHandlers(parts),
    ...sessionHandlers(context, guard, new SignInGuard(context.now)),
    ...houseHandlers(context, hub),
    ...guestHandlers(context, guard),
    ...memberHandlers(context),
    ...photoHandlers(context, log, wakeJobs),
    ...clockHandlers(context),
    ...frameHandlers(context),
    ...siteHandlers(context),
    ...coveringHandlers(context),
    ...holdHandlers(context, log, origin),
    ...calendarHandlers(context, guard, origin),
    ...protectionHandlers(context),
    ...findingHandlers(context),
    ...termHandlers(context),
    ...archiveHandlers(context, log, checkPage),
  };
  implement(router, context, handlers);
  router.use(notFound);
  return router;
}

function instanceHandlers({ isHealthy, version }: AppParts): Handlers {
  // Anyone may ask for it, and making it takes longer than most answers.
  let document: ReturnType<typeof openApiDocument> | undefined;
  return {
    health: async () => {
      await isHealthy();
      return { status: 'ok', version };
    },
    openapi: () => Promise.resolve((document ??= openApiDocument(version))),
  };
}

/** An address that holds a secret is in no list of a search engine, and its pages tell no other site of it. */
const unlisted: RequestHandler = (_req, res, next) => {
  res.setHeader('x-robots-tag', 'noindex, nofollow');
  res.setHeader('referrer-policy', 'no-referrer');
  next();
};
