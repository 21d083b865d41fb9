import { spawn } from 'node:child_process';
import { readFile, readdir, writeFile } from 'node:fs/promises';
import path from 'node:path';
import { afterEach, beforeEach, expect, it } from 'vitest';
import { FolderInUse, lockFolder } from '../../server/storage/folder-lock.ts';
import { temporaryFolder } from '../support/record.ts';

let folder: string;
let remove: () => Promise<void>;
beforeEach(async () => {
  ({ folder, remove } = await temporaryFolder());
});
afterEach(() => remove());

it('is given back and can be taken again', async () => {
  await (
    await lockFolder(folder)
  )();
  await (
    await lockFolder(folder)
  )();
});

it('refuses while another living process holds it, naming the process', async () => {
  const other = spawn('sleep', ['30']);
  try {
    const stat = await readFile(`/proc/${other.pid}/stat`, 'utf8');
    const started = stat.slice(stat.lastIndexOf(')') + 2).split(' ')[19];
    await writeFile(path.join(folder, `lock.${other.pid}.${started}`), '');
    await expect(lockFolder(folder)).rejects.toThrow(FolderInUse);
    await expect(lockFolder(folder)).rejects.toThrow(`process ${other.pid}`);
  } finally {
    other.kill('SIGKILL');
  }
});

it('takes over from a process that is gone, from a number given out again, and minds no other file', async () => {
  const gone = spawn('true');
  await new Promise((resolve) => gone.on('exit', resolve));
  for (const name of [`lock.${gone.pid}.1`, `lock.${process.ppid}.1`, 'lock.x']) {
    await writeFile(path.join(folder, name), '');
    await (
      await lockFolder(folder)
    )();
  }
  expect(await readdir(folder)).toEqual(['lock.x']);
});
