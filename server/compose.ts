import { readFile } from 'node:fs/promises';
import path from 'node:path';
import type { Certificate } from 'pkijs';
import type { Logger } from 'pino';
import { ConfigError, type Config } from './config.ts';
import { createImaging } from './imaging/imaging.ts';
import { listeningOrigin } from './listening-origin.ts';
import { createLog } from './log.ts';
import { createPaper } from './paper/paper.ts';
import { packageRoot } from './package-root.ts';
import type { Context } from './services/context.ts';
import { makePictures } from './services/make-pictures.ts';
import { measureLegibility } from './services/measure-legibility.ts';
import type { TimeStamps } from './services/stamps.ts';
import { sheetReader } from './sheets/sheet-reader.ts';
import { startStamping } from './start-stamping.ts';
import { readRoots } from './stamping/read-roots.ts';
import { timeStamps } from './stamping/time-stamps.ts';
import { accounts } from './storage/accounts/accounts.ts';
import { instanceSecret } from './storage/accounts/secrets.ts';
import { signInLibrary } from './storage/accounts/sign-in-library.ts';
import { calendars } from './storage/calendars.ts';
import { inDataFolder } from './storage/data-folder.ts';
import { lockFolder } from './storage/folder-lock.ts';
import { openJobQueue, type JobQueue } from './storage/job-queue.ts';
import { LedgerFolder } from './storage/ledger-folder.ts';
import { migrate } from './storage/migrate.ts';
import { legibilityLog } from './storage/legibility-log.ts';
import { openDatabase, type Database } from './storage/open-database.ts';
import { DiskPhotoFiles } from './storage/photo-files.ts';
import { pictureLog } from './storage/picture-log.ts';
import { rebuildIfOlder } from './storage/rebuild.ts';
import { recordStore } from './storage/record-store.ts';
import { stampLog } from './storage/stamp-log.ts';

/** The program without its HTTP face. */
export interface Core {
  readonly context: Context;
  readonly database: Database;
  readonly jobs: JobQueue;
  readonly log: Logger;
  close(): Promise<void>;
}

export interface ComposeOptions {
  readonly now?: () => Date;
  readonly log?: Logger;
}

type Undo = () => Promise<unknown>;

/** Configuration → lock → database → ledger files → photo store → jobs. Closes in reverse, also when it fails half way. */
export async function compose(config: Config, options: ComposeOptions = {}): Promise<Core> {
  const undo: Undo[] = [];
  const close = async () => {
    for (let step = undo.pop(); step; step = undo.pop()) await step();
  };
  try {
    return { ...(await build(config, options, undo)), close };
  } catch (error) {
    await close();
    throw error;
  }
}

async function build(config: Config, options: ComposeOptions, undo: Undo[]): Promise<Omit<Core, 'close'>> {
  const log = options.log ?? createLog(config.logLevel);
  const now = options.now ?? (() => new Date());
  const stamps = await stampService(config);
  const alone = config.database.kind === 'embedded';
  const { dataFolder } = config;
  if (alone) undo.push(await inDataFolder(dataFolder, () => lockFolder(dataFolder)));
  const database = await openDatabase(config.database);
  undo.push(() => database.close());
  await migrate(database.pool, path.join(packageRoot(), 'server', 'storage', 'migrations'));
  await rebuildIfOlder(database.db);
  const keeper = alone ? await LedgerFolder.open(database.db, path.join(dataFolder, 'houses')) : null;
  if (keeper) undo.push(() => keeper.close());

  const files = new DiskPhotoFiles(dataFolder);
  await inDataFolder(dataFolder, () => files.prepare(alone, now()));
  const imaging = createImaging({ heicWorker: built('heic-worker') });
  undo.push(() => imaging.close());
  const jobs = await openJobQueue(database, (err) => log.warn({ err }, 'job queue'));
  undo.push(() => jobs.close());

  const store = recordStore({
    db: database.db,
    keeper,
    now,
    enqueuePictures: (tx, photo) => jobs.enqueue('pictures', tx, [photo]),
    enqueueLegibility: (tx, photo) => jobs.enqueue('legibility', tx, [photo]),
    enqueueStamp: (tx, house) =>
      config.timestamps ? jobs.enqueue('stamps', tx, [house]) : Promise.resolve(),
  });
  const library = signInLibrary(database.pool, await signInSettings(config, database));
  // It begins by itself; where it cannot, the start has failed.
  await library.$context;
  const context: Context = {
    store,
    accounts: accounts(database.db, library, now),
    calendars: calendars(database.db, now),
    files,
    imaging,
    paper: createPaper(),
    sheets: sheetReader({ worker: built('sheet-worker') }),
    timeStamps: stamps,
    stampLog: stampLog(database.db, now),
    now,
  };
  if (config.role !== 'web') {
    await startWorking(database, jobs, context, log);
    if (context.timeStamps) undo.push(await startStamping(database, jobs, context, log));
  }
  return { context, database, jobs, log };
}

async function signInSettings({ origin, host, port }: Config, { db }: Database) {
  return {
    secret: await instanceSecret(db, 'session'),
    origin: origin ?? listeningOrigin(host, port),
    secure: origin?.startsWith('https://') ?? false,
  };
}

/**
 * Also what an earlier process left: a photo whose job died with it still gets its pictures, and tags that were
 * measured by older rules are measured again.
 */
async function startWorking(
  database: Database,
  jobs: JobQueue,
  context: Context,
  log: Logger,
): Promise<void> {
  const made = pictureLog(database.db);
  const legible = legibilityLog(database.db);
  await jobs.work('pictures', (photos) => makePictures(context, made, photos));
  await jobs.work('legibility', async (photos) => {
    for (const photo of new Set(photos)) {
      await jobs.rested('pictures');
      await measureLegibility(context, legible, photo);
    }
  });
  const left = {
    pictures: await context.store.read.photosWithoutPictures(),
    legibility: await legible.photosToMeasure(),
  };
  for (const kind of ['pictures', 'legibility'] as const) {
    if (left[kind].length === 0) continue;
    log.info({ photos: left[kind].length, kind }, 'making what is missing');
    await database.db.transaction().execute((tx) => jobs.enqueue(kind, tx, left[kind]));
  }
}

/** A bundle that runs in a thread of its own. */
function built(name: string): string {
  return path.join(packageRoot(), 'dist', 'server', `${name}.js`);
}

async function stampService({ timestamps }: Config): Promise<TimeStamps | null> {
  if (!timestamps) return null;
  const { url, caFile } = timestamps;
  return timeStamps({ url, roots: caFile === null ? null : await rootsIn(caFile) });
}

async function rootsIn(caFile: string): Promise<Certificate[]> {
  const pem = await readFile(caFile, 'utf8').catch(() => {
    throw new ConfigError([`ARAKABE_TIMESTAMP_CA: there is no file ${caFile} that can be read.`]);
  });
  try {
    return readRoots(pem);
  } catch {
    throw new ConfigError([`ARAKABE_TIMESTAMP_CA: the file ${caFile} holds no certificate in PEM.`]);
  }
}
