import { mkdir, open, readFile, rm } from 'node:fs/promises';
import path from 'node:path';

interface Holder {
  readonly pid: number;
  /** When the process started, as the system counts it: a number that was given out again is told apart. */
  readonly started: string | null;
}

/**
 * Takes the data folder for this process. Two embedded databases on one folder would silently lose
 * rows. A lock whose process is gone, as after kill -9, is taken over. Throws a plain sentence.
 */
export async function lockFolder(folder: string): Promise<() => Promise<void>> {
  await mkdir(folder, { recursive: true });
  const file = path.join(folder, 'lock');
  const me: Holder = { pid: process.pid, started: await startOf(process.pid) };
  for (let attempt = 0; attempt < 3; attempt++) {
    if (await create(file, me)) return () => rm(file, { force: true });
    const holder = await readHolder(file);
    if (holder && (await isAlive(holder))) throw new FolderInUse(folder, holder.pid);
    await rm(file, { force: true });
  }
  throw new FolderInUse(folder, 0);
}

export class FolderInUse extends Error {
  constructor(folder: string, pid: number) {
    super(
      `Another Arakabe (process ${pid}) is working on ${folder}. ` +
        'Stop it first, or give this one a folder of its own with ARAKABE_DATA.',
    );
  }
}

async function create(file: string, me: Holder): Promise<boolean> {
  try {
    const handle = await open(file, 'wx');
    await handle.writeFile(JSON.stringify(me));
    await handle.sync();
    await handle.close();
    return true;
  } catch (error) {
    if ((error as NodeJS.ErrnoException).code === 'EEXIST') return false;
    throw error;
  }
}

async function readHolder(file: string): Promise<Holder | undefined> {
  try {
    return JSON.parse(await readFile(file, 'utf8')) as Holder;
  } catch {
    return undefined;
  }
}

async function isAlive({ pid, started }: Holder): Promise<boolean> {
  if (pid === process.pid) return false;
  try {
    process.kill(pid, 0);
  } catch (error) {
    if ((error as NodeJS.ErrnoException).code !== 'EPERM') return false;
  }
  const startedNow = await startOf(pid);
  return started === null || startedNow === null || started === startedNow;
}

/** Field 22 of /proc/<pid>/stat (proc(5)), after the name, which may hold anything; null on other systems. */
async function startOf(pid: number): Promise<string | null> {
  const text = await readFile(`/proc/${pid}/stat`, 'utf8').catch(() => null);
  return text?.slice(text.lastIndexOf(')') + 2).split(' ')[19] ?? null;
}
