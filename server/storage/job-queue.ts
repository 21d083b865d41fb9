import { CompiledQuery } from 'kysely';
import PgBoss from 'pg-boss';
import type { Database } from './open-database.ts';
import { inBatches } from './projection/in-batches.ts';
import type { Tx } from './tx.ts';

/** What is made of photos, and stamps of houses; those named first go before the others where they come together. */
const QUEUES = {
  pictures: 'make-pictures',
  legibility: 'measure-legibility',
  stamps: 'stamp-head',
} as const;
export type JobKind = keyof typeof QUEUES;
const THING: Readonly<Record<JobKind, string>> = { pictures: 'photo', legibility: 'photo', stamps: 'house' };
const KINDS = Object.keys(QUEUES) as JobKind[];

/**
 * The queue sleeps half a second between fetches, so a fetch takes as many pictures as two hands finish in about
 * that time. Tags come in quick succession on one photo, and a fetch takes what there is of them.
 */
const BATCH: Readonly<Record<JobKind, number>> = { pictures: 8, legibility: 40, stamps: 4 };
const OPTIONS = { retryLimit: 3, retryDelay: 5, expireInSeconds: 300 };
/** Jobs of one insertion: after better rules all photos of an instance may wait at once. */
const AT_ONCE = 1000;
/** Any fixed number, other than that of the migrations. */
const START_LOCK = 4_310_002;

export interface JobQueue {
  /** A job a photo, or a house. Part of the transaction: the job exists only if the statement does. */
  enqueue(kind: JobKind, tx: Tx, things: readonly string[]): Promise<void>;
  /** Starts to work; `things` come in small batches, a batch that throws is tried again. */
  work(kind: JobKind, make: (things: readonly string[]) => Promise<void>): Promise<void>;
  /** Resolves when no batch of this kind is being worked on. */
  rested(kind: JobKind): Promise<void>;
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
    for (const kind of KINDS) await boss.createQueue(QUEUES[kind]);
  });
  const workers: string[] = [];
  const running = new Map<JobKind, Promise<unknown>>();
  return {
    enqueue: async (kind, tx, things) => {
      const executeSql = (text: string, values: unknown[]) =>
        tx.executeQuery(CompiledQuery.raw(text, values));
      await inBatches(things, AT_ONCE, async (batch) => {
        const jobs = batch.map((thing) => ({
          ...OPTIONS,
          name: QUEUES[kind],
          data: { [THING[kind]]: thing },
        }));
        await boss.insert(jobs, { db: { executeSql } });
      });
    },
    work: async (kind, make) => {
      const options = { batchSize: BATCH[kind], pollingIntervalSeconds: 0.5 };
      const worker = await boss.work<Record<string, string>>(QUEUES[kind], options, (jobs) => {
        const things = jobs.flatMap(({ data }) => data[THING[kind]] ?? []);
        const batch = line.during(() => make(things));
        running.set(
          kind,
          batch.catch(() => undefined),
        );
        return batch;
      });
      workers.push(worker);
    },
    rested: async (kind) => {
      for (let seen; seen !== running.get(kind);) await (seen = running.get(kind));
    },
    wake: () => {
      for (const worker of workers) boss.notifyWorker(worker);
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
