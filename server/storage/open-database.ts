import { mkdir } from 'node:fs/promises';
import { CamelCasePlugin, Kysely, PostgresDialect } from 'kysely';
import pg from 'pg';
import type { DatabaseConfig } from '../config.ts';
import type { Tables } from './tables.ts';

export type Db = Kysely<Tables>;

/** One open PostgreSQL, embedded or served. `listen` hears what any process of this database announces. */
export interface Database {
  readonly kind: DatabaseConfig['kind'];
  readonly pool: pg.Pool;
  readonly db: Db;
  listen(channel: string, hear: (payload: string) => void): Promise<void>;
  close(): Promise<void>;
}

const DATE = 1082;
const INT8 = 20;

/** Days stay text and 64-bit integers become numbers; everything else as pg does it. */
const types: pg.CustomTypesConfig = {
  getTypeParser: (oid: number, format?: 'text' | 'binary'): ((text: string) => unknown) => {
    if (oid === DATE) return (text) => text;
    if (oid === INT8) return Number;
    return pg.types.getTypeParser(oid, format) as (text: string) => unknown;
  },
};

export function openDatabase(config: DatabaseConfig): Promise<Database> {
  return config.kind === 'embedded' ? openEmbedded(config.folder) : openServer(config.url);
}

/** PGlite takes one session: a pool of one makes every other query wait for it. */
async function openEmbedded(folder: string): Promise<Database> {
  const [{ PGlite }, { createPgConfig }] = await Promise.all([
    import('@electric-sql/pglite'),
    import('@electric-sql/pglite/node-postgres'),
  ]);
  if (!folder.startsWith('memory://')) await mkdir(folder, { recursive: true });
  const pglite = await PGlite.create(folder).catch((cause: unknown) => {
    throw new EmbeddedDatabaseBroken(folder, cause);
  });
  const pool = new pg.Pool({ ...createPgConfig(pglite), max: 1, types, idleTimeoutMillis: 0 });
  const db = kyselyOver(pool);
  return {
    kind: 'embedded',
    pool,
    db,
    listen: async (channel, hear) => void (await pglite.listen(channel, hear)),
    close: async () => {
      await pool.end();
      await pglite.close();
    },
  };
}

/** As after a power cut in the middle of a write: the folder is there and cannot be opened. */
export class EmbeddedDatabaseBroken extends Error {
  constructor(folder: string, cause: unknown) {
    super(
      `The database in ${folder} cannot be opened. Move that folder away and start again: the houses come back ` +
        'from the originals and the ledger files beside it. Accounts, passwords, links and access tokens do not: a ' +
        'new link for the first account is printed, and that account becomes the keeper of the houses’ records.',
      { cause },
    );
  }
}

/** Something is there, and hangs up on being spoken to as PostgreSQL, or says nothing; pg has no code for that. */
export class NoPostgres extends Error {
  constructor(options: ErrorOptions) {
    super(
      'What is at DATABASE_URL does not answer as a PostgreSQL. Is it one, and is the address right?',
      options,
    );
  }
}

const NO_ANSWER = /^Connection terminated|^timeout expired/;
const PATIENCE_MS = 15_000;

/** The pool would wait for ever, and later must wait as long as it takes. */
async function assertAnswers(url: string): Promise<void> {
  const client = new pg.Client({ connectionString: url, connectionTimeoutMillis: PATIENCE_MS });
  // A second complaint about the same connection would end the process.
  client.on('error', () => undefined);
  try {
    await client.connect();
    await client.end();
  } catch (cause) {
    throw NO_ANSWER.test((cause as Error).message) ? new NoPostgres({ cause }) : cause;
  }
}

async function openServer(url: string): Promise<Database> {
  await assertAnswers(url);
  const pool = new pg.Pool({ connectionString: url, max: 10, types, application_name: 'arakabe' });
  // An idle connection that breaks is replaced by the pool; without a listener it would end the process.
  pool.on('error', () => undefined);
  const ears = new Set<Ear>();
  return {
    kind: 'server',
    pool,
    db: kyselyOver(pool),
    listen: async (channel, hear) => {
      const ear = new Ear(url, channel, hear);
      ears.add(ear);
      await ear.open();
    },
    close: async () => {
      await Promise.all([...ears].map((ear) => ear.close()));
      await pool.end();
    },
  };
}

function kyselyOver(pool: pg.Pool): Db {
  return new Kysely<Tables>({
    dialect: new PostgresDialect({ pool }),
    plugins: [new CamelCasePlugin({ maintainNestedObjectKeys: true })],
  });
}

/** A connection of its own for LISTEN, opened again a second after it breaks. */
class Ear {
  #client: pg.Client | undefined;
  #closed = false;

  constructor(
    private readonly url: string,
    private readonly channel: string,
    private readonly hear: (payload: string) => void,
  ) {}

  async open(): Promise<void> {
    const client = new pg.Client({ connectionString: this.url, application_name: 'arakabe-listen' });
    this.#client = client;
    client.on('notification', (message) => this.hear(message.payload ?? ''));
    client.on('error', () => this.#reopen());
    client.on('end', () => this.#reopen());
    await client.connect();
    await client.query(`listen ${pg.escapeIdentifier(this.channel)}`);
  }

  #reopen(): void {
    if (this.#closed) return;
    const broken = this.#client;
    this.#client = undefined;
    if (!broken) return;
    broken.end().catch(() => undefined);
    setTimeout(() => void (this.#closed || this.open().catch(() => this.#reopen())), 1000).unref();
  }

  async close(): Promise<void> {
    this.#closed = true;
    await this.#client?.end();
  }
}
