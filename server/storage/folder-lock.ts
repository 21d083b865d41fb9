import { randomInt } from 'node:crypto';
import { rmSync } from 'node:fs';
import { mkdir, open, readFile, readdir, rm } from 'node:fs/promises';
import path from 'node:path';
import { setTimeout as sleep } from 'node:timers/promises';

/** Several that start at the same moment all step back and try again; one that runs is still there after all tries. */
const TRIES = 5;
const STEP_BACK_MS = [20, 300] as const;

/**
 * Takes the data folder for this process. Two embedded databases on one folder would silently lose
 * rows. A lock whose process is gone, as after kill -9, counts for nothing. Throws a plain sentence.
 *
 * Each process writes a file of its own name and then looks for those of others: of two, at least one
 * sees the other. One shared file could not be taken over without a moment in which two hold it.
 */
export async function lockFolder(folder: string): Promise<() => Promise<void>> {
  await mkdir(folder, { recursive: true });
  const mine = nameOf(process.pid, await startOf(process.pid));
  const atExit = () => rmSync(path.join(folder, mine), { force: true });
  const giveBack = async () => {
    await rm(path.join(folder, mine), { force: true });
    process.off('exit', atExit);
  };
  // Also an error that nobody waits for gives the folder back.
  process.once('exit', atExit);
  try {
    await untilAlone(folder, mine);
  } catch (error) {
    await giveBack();
    throw error;
  }
  return giveBack;
}

async function untilAlone(folder: string, mine: string): Promise<void> {
  for (let attempt = 1; ; attempt++) {
    await write(path.join(folder, mine));
    const holder = await otherHolder(folder, mine);
    if (holder === undefined) return;
    await rm(path.join(folder, mine), { force: true });
    if (attempt === TRIES) throw new FolderInUse(folder, holder);
    await sleep(randomInt(...STEP_BACK_MS));
  }
}

export class FolderInUse extends Error {
  constructor(folder: string, pid: number) {
    super(
      `Another Arakabe (process ${pid}) is working on ${folder}. ` +
        'Stop it first, or give this one a folder of its own with ARAKABE_DATA.',
    );
  }
}

/** With when it started, as the system counts it: a process number that was given out again is told apart. */
function nameOf(pid: number, started: string | null): string {
  return `lock.${pid}.${started ?? 'unknown'}`;
}

async function write(file: string): Promise<void> {
  const handle = await open(file, 'w');
  await handle.sync();
  await handle.close();
}

/** The living process that has the folder or wants it too; what the dead left is cleared away. */
async function otherHolder(folder: string, mine: string): Promise<number | undefined> {
  for (const name of await readdir(folder)) {
    const [, pid, started] = /^lock\.(\d+)\.(\d+|unknown)$/.exec(name) ?? [];
    if (pid === undefined || name === mine) continue;
    if (await isAlive(Number(pid), started === 'unknown' ? null : (started ?? null))) return Number(pid);
    await rm(path.join(folder, name), { force: true });
  }
  return undefined;
}

async function isAlive(pid: number, started: string | null): Promise<boolean> {
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
