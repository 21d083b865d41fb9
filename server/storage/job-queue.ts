import { CompiledQuery } from 'kysely';
import PgBoss from 'pg-boss';
import type { Database } from './open-database.ts';
import type { Tx } from './tx.ts';

const PICTURES = 'make-pictures';
/** The queue sleeps half a second between fetches, so a fetch takes as many as two hands finish in about that time. */
const BATCH = 8;
const EXPIRE_S = 300;
/** Any fixed number, other than that of the migrations. */
const START_LOCK = 4_310_002;

export interface JobQueue {
  /** Part of the transaction: the job exists only if the statement does. */
  enqueuePictures(tx: Tx, photo: string): Promise<void>;
  /** Starts to work; `photos` come in small batches, a batch that throws is tried again. */
  workOnPictures(make: (photos: readonly string[]) => Promise<void>): Promise<void>;
  /** Looks for work now and not at the next half second. */
  wake(): void;
  close(): Promise<void>;
}

/** Jobs in the same database, by pg-boss. `onError` hears what the queue itself cannot do. */
export async function openJobQueue(database: Database, onError: (error: Error) => void): Promise<JobQueue> {
  const line = new ClosableLine(database);
  const boss = new PgBoss({
    db: { executeSql: (text, values) => line.execute(text, values) },
    schedule: false,
  });
  boss.on('error', onError);
  await oneStarterAtATime(database, async () => {
    await boss.start();
    await boss.createQueue(PICTURES);
  });
  let worker: string | undefined;
  return {
    enqueuePictures: async (tx, photo) => {
      const executeSql = (text: string, values: unknown[]) =>
        tx.executeQuery(CompiledQuery.raw(text, values));
      const options = { retryLimit: 3, retryDelay: 5, expireInSeconds: EXPIRE_S, db: { executeSql } };
      await boss.send(PICTURES, { photo }, options as PgBoss.SendOptions);
    },
    workOnPictures: async (make) => {
      const options = { batchSize: BATCH, pollingIntervalSeconds: 0.5 };
      worker = await boss.work<{ photo: string }>(PICTURES, options, (jobs) =>
        line.during(() => make(jobs.map((job) => job.data.photo))),
      );
    },
    wake: () => {
      if (worker !== undefined) boss.notifyWorker(worker);
    },
    close: async () => {
      await boss.stop({ graceful: true, close: false, wait: true, timeout: 20_000 });
      await line.close();
    },
  };
}

/** Of two that make the queue's tables at the same moment one would fail: pg-boss looks before it locks. */
async function oneStarterAtATime(database: Database, start: () => Promise<void>): Promise<void> {
  // The embedded database has one process, and one client, which `start` needs itself.
  if (database.kind === 'embedded') return start();
  const client = await database.pool.connect();
  try {
    await client.query('select pg_advisory_lock($1)', [START_LOCK]);
    await start();
  } finally {
    await client.query('select pg_advisory_unlock($1)', [START_LOCK]).catch(() => undefined);
    client.release();
  }
}

/**
 * The queue's way to the database. Stopping the queue does not wait for a fetch that is under way, so
 * the line does; what comes after that never gets an answer, and its jobs are taken up at the next start.
 */
class ClosableLine {
  readonly #busy = new Set<Promise<unknown>>();
  #closed = false;

  constructor(private readonly database: Database) {}

  execute(text: string, values: unknown[] | undefined): Promise<{ rows: unknown[] }> {
    return this.during(() => this.#query(text, values));
  }

  async during<T>(work: () => Promise<T>): Promise<T> {
    if (this.#closed) return new Promise<never>(() => undefined);
    const running = work();
    this.#busy.add(running);
    try {
      return await running;
    } finally {
      this.#busy.delete(running);
    }
  }

  /** A client of its own for each call: after a failed pool.query() the embedded database's next one would fail too. */
  async #query(text: string, values: unknown[] | undefined): Promise<{ rows: unknown[] }> {
    const client = await this.database.pool.connect();
    try {
      return await client.query(text, values);
    } catch (error) {
      // A text of several statements may have begun a transaction, in which nobody else must find himself.
      await client.query('rollback').catch(() => undefined);
      throw error;
    } finally {
      client.release();
    }
  }

  async close(): Promise<void> {
    this.#closed = true;
    while (this.#busy.size > 0) await Promise.allSettled(this.#busy);
  }
}
