import { existsSync, readFileSync } from 'node:fs';
import { createServer, type Server } from 'node:http';
import type { AddressInfo } from 'node:net';
import path from 'node:path';
import { CannotListen } from './cannot-listen.ts';
import { compose, type ComposeOptions, type Core } from './compose.ts';
import type { Config } from './config.ts';
import { API, createApp } from './http/app.ts';
import { EventHub } from './http/event-hub.ts';
import { LINK_DAYS } from '#domain/contract/link-days';
import { listeningOrigin } from './listening-origin.ts';
import { packageRoot } from './package-root.ts';
import { addDays } from './services/add-days.ts';
import { Failure } from './services/failure.ts';
import { adoptHouses } from './services/people.ts';
import { CHANNEL } from './storage/ledger-store.ts';

export interface Running {
  readonly core: Core;
  /** Where it answers, e.g. http://127.0.0.1:4310. */
  readonly origin: string;
  /** The one-time link for the first account, while there is none. */
  readonly firstLink: string | null;
  stop(): Promise<void>;
}

/** Starts everything that the configuration asks for. */
export async function serve(config: Config, options: ComposeOptions = {}): Promise<Running> {
  const core = await compose(config, options);
  try {
    await prepareOwner(core, config);
    return config.role === 'worker' ? await listenForHealth(core, config) : await listen(core, config);
  } catch (error) {
    await core.close();
    throw error;
  }
}

/** A worker answers only whether it is well, for whoever watches over it. */
async function listenForHealth(core: Core, config: Config): Promise<Running> {
  const server = createServer((req, res) => {
    const well = req.url === `${API}/health` ? isHealthy(core) : Promise.reject(new Error('not here'));
    well.then(
      () => res.writeHead(200).end(),
      () => res.writeHead(req.url === `${API}/health` ? 503 : 404).end(),
    );
  });
  await bind(server, config);
  const stop = async () => {
    await closeServer(server);
    await core.close();
  };
  return { core, origin: '', firstLink: null, stop };
}

async function isHealthy({ database }: Core): Promise<void> {
  await database.pool.query('select 1');
}

async function listen(core: Core, config: Config): Promise<Running> {
  const hub = new EventHub((house) => core.context.store.read.houseState(house));
  await core.database.listen(CHANNEL, (payload) => hub.hear(payload));
  const clientFolder = path.join(packageRoot(), 'dist', 'client');
  const app = createApp({
    context: core.context,
    log: core.log,
    hub,
    wakeJobs: () => core.jobs.wake(),
    isHealthy: () => isHealthy(core),
    version: readVersion(),
    clientFolder: existsSync(path.join(clientFolder, 'index.html')) ? clientFolder : null,
    checkPage: path.join(packageRoot(), 'dist', 'check', 'check.html'),
    secure: config.origin?.startsWith('https://') ?? false,
    origin: config.origin,
    proxies: config.proxies,
  });
  const server = createServer(app);
  // A photo over a weak network may take longer than the five minutes that Node allows a request.
  server.requestTimeout = 60 * 60 * 1000;
  // Longer than proxies and browsers keep an idle connection: whoever closes first must not be the one that is
  // just being sent a request. Node's five seconds also end a waiting request when the event loop was busy so long.
  server.keepAliveTimeout = 75 * 1000;
  server.headersTimeout = 80 * 1000;
  const port = await bind(server, config);
  const origin = config.origin ?? listeningOrigin(config.host, port);
  const stop = async () => {
    hub.close();
    await closeServer(server);
    await core.close();
  };
  return { core, origin, firstLink: await firstLink(core, origin), stop };
}

function bind(server: Server, { host, port }: Config): Promise<number> {
  return new Promise((resolve, reject) => {
    server.once('error', (error) => reject(new CannotListen(host, port, error)));
    server.listen(port, host, () => resolve((server.address() as AddressInfo).port));
  });
}

function closeServer(server: Server): Promise<void> {
  return new Promise((resolve) => {
    server.close(() => resolve());
    server.closeIdleConnections();
    setTimeout(() => server.closeAllConnections(), 5000).unref();
  });
}

/** With ARAKABE_OWNER_* the first account is made unattended, by one of those that start at the same time. */
async function prepareOwner({ context }: Core, { owner, role }: Config): Promise<void> {
  if (!owner || role === 'worker' || (await context.accounts.anyExists())) return;
  const name = owner.email.split('@')[0] ?? owner.email;
  try {
    await adoptHouses(context, await context.accounts.create({ ...owner, name, keeper: true }));
  } catch (error) {
    if (!(error instanceof Failure && error.code === 'email-in-use')) throw error;
  }
}

async function firstLink({ context }: Core, origin: string): Promise<string | null> {
  if (await context.accounts.anyExists()) return null;
  const nobody = { email: null, houseId: null, role: null, personId: null, madeBy: null };
  const until = addDays(context.now(), LINK_DAYS.usual);
  return `${origin}/link/${await context.accounts.makeLink({ purpose: 'first-account', ...nobody, until })}`;
}

function readVersion(): string {
  const text = readFileSync(path.join(packageRoot(), 'package.json'), 'utf8');
  return (JSON.parse(text) as { version: string }).version;
}
