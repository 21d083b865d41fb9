import type { Logger } from 'pino';
import type { Context } from './services/context.ts';
import { housesToStamp, stampHead } from './services/stamp-heads.ts';
import type { JobQueue } from './storage/job-queue.ts';
import type { Database } from './storage/open-database.ts';

/** How often it is looked which houses want a stamp; a request that failed is made again after as long. */
const LOOK_EVERY_MS = 60 * 60 * 1000;

/** Stamps what is asked for, and what is due once a day. Trouble is told and tried again; no work waits for it. */
export async function startStamping(
  database: Database,
  jobs: JobQueue,
  context: Context,
  log: Logger,
): Promise<() => Promise<void>> {
  await jobs.work('stamps', async (houses) => {
    for (const house of new Set(houses)) {
      const trouble = await stampHead(context, house);
      if (trouble)
        log.warn(
          { house, reason: trouble.reason, detail: trouble.detail },
          'the tree head got no time stamp',
        );
    }
  });
  const look = async () => {
    const houses = await housesToStamp(context);
    if (houses.length > 0)
      await database.db.transaction().execute((tx) => jobs.enqueue('stamps', tx, houses));
  };
  await look();
  const again = () => look().catch((err: unknown) => log.warn({ err }, 'houses to stamp'));
  const timer = setInterval(() => void again(), LOOK_EVERY_MS);
  timer.unref();
  return () => Promise.resolve(clearInterval(timer));
}
