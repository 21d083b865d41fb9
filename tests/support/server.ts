import path from 'node:path';
import pino from 'pino';
import type { Problem } from '#domain/contract/problems';
import type { HouseView } from '#domain/contract/views';
import type { ComposeOptions } from '../../server/compose.ts';
import type { Config, DatabaseConfig } from '../../server/config.ts';
import { serve, type Running } from '../../server/serve.ts';
import { spareInitdb, type PlaceForDatabase } from './databases.ts';
import { temporaryFolder } from './record.ts';

export const OWNER = { email: 'owner@example.org', password: 'a long enough password' };

export interface TestServer {
  readonly running: Running;
  readonly dataFolder: string;
  /** Signed in as the owner that the configuration names. */
  readonly owner: Client;
  /** Signed in as somebody who has just made an account through a link of the house. */
  join(house: string, email: string, role?: string): Promise<Client>;
  anonymous(): Client;
  close(): Promise<void>;
}

/** `dataFolder`: one that is there already, and stays. */
export async function startServer(
  place: PlaceForDatabase,
  { config, dataFolder, ...options }: ComposeOptions & { config?: Partial<Config>; dataFolder?: string } = {},
): Promise<TestServer> {
  const { folder, remove } =
    dataFolder === undefined
      ? await temporaryFolder()
      : { folder: dataFolder, remove: () => Promise.resolve() };
  if (place.config.kind === 'embedded') await spareInitdb(path.join(folder, 'database'));
  const running = await serve(
    { ...configFor(place.config, folder), ...config },
    { log: pino({ level: 'silent' }), ...options },
  );
  // Behind a proxy that is not there the address that people type leads nowhere.
  const origin = config?.origin ? `http://127.0.0.1:${config.port}` : running.origin;
  const anonymous = () => new Client(origin);
  const owner = anonymous();
  await owner.post('/session', OWNER);
  return {
    running,
    dataFolder: folder,
    owner,
    anonymous,
    join: async (house, email, role = 'carpenter') => {
      const { link } = await owner.post<{ link: string }>(`/houses/${house}/people`, { email, role });
      const client = anonymous();
      await client.post(`/links/${link}`, { name: email.split('@')[0], email, password: OWNER.password });
      return client;
    },
    close: async () => {
      await running.stop();
      await remove();
    },
  };
}

export function configFor(database: DatabaseConfig, dataFolder: string) {
  return {
    host: '127.0.0.1',
    port: 0,
    origin: null,
    proxies: [],
    dataFolder,
    database:
      database.kind === 'embedded'
        ? { kind: 'embedded' as const, folder: path.join(dataFolder, 'database') }
        : database,
    role: 'all' as const,
    logLevel: 'silent',
    timestamps: null,
    owner: OWNER,
  };
}

export class HttpProblem extends Error {
  constructor(
    readonly status: number,
    readonly problem: Problem,
  ) {
    super(`${status} ${problem.code}: ${problem.detail}`);
  }
}

/** By which code a request is refused, or that it is not. */
export function codeOf(work: Promise<unknown>): Promise<string> {
  return work.then(
    () => 'no problem',
    (error: unknown) => (error instanceof HttpProblem ? error.problem.code : String(error)),
  );
}

/** A browser without a screen: keeps cookies, speaks JSON, throws problems. */
export class Client {
  #cookie = '';

  constructor(
    readonly origin: string,
    private readonly token?: string,
  ) {}

  withToken(token: string): Client {
    return new Client(this.origin, token);
  }

  get<T = unknown>(address: string): Promise<T> {
    return this.#json<T>('GET', address);
  }

  post<T = unknown>(address: string, body?: unknown): Promise<T> {
    return this.#json<T>('POST', address, body);
  }

  put<T = unknown>(address: string, body?: unknown): Promise<T> {
    return this.#json<T>('PUT', address, body);
  }

  patch<T = unknown>(address: string, body?: unknown): Promise<T> {
    return this.#json<T>('PATCH', address, body);
  }

  delete<T = unknown>(address: string): Promise<T> {
    return this.#json<T>('DELETE', address);
  }

  async raw(method: string, address: string, init: RequestInit = {}): Promise<Response> {
    const headers = new Headers(init.headers);
    if (this.#cookie) headers.set('cookie', this.#cookie);
    if (this.token) headers.set('authorization', `Bearer ${this.token}`);
    const response = await fetch(`${this.origin}/api/v1${address}`, { ...init, method, headers });
    const cookies = response.headers.getSetCookie().map((cookie) => cookie.split(';')[0] ?? '');
    if (cookies.length > 0) this.#cookie = cookies.filter((cookie) => !cookie.endsWith('=')).join('; ');
    return response;
  }

  /** Sends files in one multipart request; names are sent as they are. */
  async upload<T = unknown>(house: string, files: { name: string; bytes: Uint8Array }[]): Promise<T> {
    const form = new FormData();
    for (const { name, bytes } of files) form.append('photos', new Blob([Uint8Array.from(bytes)]), name);
    return this.#read<T>(await this.raw('POST', `/houses/${house}/photos`, { body: form }));
  }

  async #json<T>(method: string, address: string, body?: unknown): Promise<T> {
    const init =
      body === undefined
        ? {}
        : { body: JSON.stringify(body), headers: { 'content-type': 'application/json' } };
    return this.#read<T>(await this.raw(method, address, init));
  }

  async #read<T>(response: Response): Promise<T> {
    if (response.status === 204) return undefined as T;
    const value: unknown = await response.json();
    if (!response.ok) throw new HttpProblem(response.status, value as Problem);
    return value as T;
  }
}

export async function newHouse(client: Client, name = 'Boathouse'): Promise<HouseView> {
  return client.post<HouseView>('/houses', { id: crypto.randomUUID(), name, zone: 'Asia/Tokyo' });
}
