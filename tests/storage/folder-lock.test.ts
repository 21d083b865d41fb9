import { spawn, type ChildProcess } from 'node:child_process';
import { mkdtemp, readFile, readdir, writeFile } from 'node:fs/promises';
import path from 'node:path';
import { build } from 'esbuild';
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

it('refuses while another living process holds it, naming the process, and leaves its lock alone', async () => {
  const other = spawn('sleep', ['30']);
  try {
    const stat = await readFile(`/proc/${other.pid}/stat`, 'utf8');
    const started = stat.slice(stat.lastIndexOf(')') + 2).split(' ')[19];
    const theirs = `lock.${other.pid}.${started}`;
    await writeFile(path.join(folder, theirs), '');
    await expect(lockFolder(folder)).rejects.toThrow(FolderInUse);
    await expect(lockFolder(folder)).rejects.toThrow(`process ${other.pid}`);
    expect(await readdir(folder)).toEqual([theirs]);
  } finally {
    other.kill('SIGKILL');
  }
});

it('takes over from a process that is gone, from a number given out again, and minds no other file', async () => {
  const gone = spawn('true');
  await new Promise((resolve) => gone.on('exit', resolve));
  await writeFile(path.join(folder, 'lock.x'), '');
  for (const left of [`lock.${gone.pid}.1`, `lock.${process.ppid}.1`, `lock.${process.pid}.1`]) {
    await writeFile(path.join(folder, left), '');
    const giveBack = await lockFolder(folder);
    expect(await readdir(folder)).toHaveLength(2);
    await giveBack();
    expect(await readdir(folder)).toEqual(['lock.x']);
  }
});

it('is given back by an error that nobody waits for', async () => {
  const program = path.join(folder, 'fail.mjs');
  const source = path.join(import.meta.dirname, '../../server/storage/folder-lock.ts');
  const contents = `import { lockFolder } from ${JSON.stringify(source)};
    await lockFolder(process.argv[2]);
    console.log('held');
    void Promise.reject(new Error('planted'));
    setInterval(() => undefined, 1000);`;
  await build({ stdin: { contents, resolveDir: folder }, ...BUNDLE, outfile: program });
  const wanted = await mkdtemp(path.join(folder, 'data-'));
  const child = spawn(process.execPath, [program, wanted]);
  const ended = new Promise((resolve) => child.on('exit', resolve));
  expect(await firstWord(child)).toBe('held');
  expect(await ended).toBe(1);
  expect(await readdir(wanted)).toEqual([]);
});

it('goes to exactly one of several that want it at the same moment, fresh or left by the dead', async () => {
  const program = path.join(folder, 'want.mjs');
  const source = path.join(import.meta.dirname, '../../server/storage/folder-lock.ts');
  await build({ stdin: { contents: wanting(source), resolveDir: folder }, ...BUNDLE, outfile: program });
  for (let round = 0; round < 6; round++) {
    const wanted = await mkdtemp(path.join(folder, 'data-'));
    if (round % 2 === 1) await writeFile(path.join(wanted, 'lock.1.1'), '');
    const at = String(Date.now() + 1000);
    const all = Array.from({ length: 4 }, () => spawn(process.execPath, [program, wanted, at]));
    const said = await Promise.all(all.map((child) => firstWord(child)));
    for (const child of all) child.kill('SIGKILL');
    expect(said.sort(), `round ${round}`).toEqual(['held', 'refused', 'refused', 'refused']);
  }
}, 60_000);

const BUNDLE = { bundle: true, platform: 'node', format: 'esm', logLevel: 'error' } as const;

/** Waits for the agreed moment, says how it went, and holds on until it is ended. */
function wanting(source: string): string {
  return `import { lockFolder } from ${JSON.stringify(source)};
    while (Date.now() < Number(process.argv[3]));
    lockFolder(process.argv[2]).then(() => console.log('held'), () => console.log('refused'));
    setInterval(() => undefined, 1000);`;
}

function firstWord({ stdout }: ChildProcess): Promise<string> {
  return new Promise((resolve) => stdout?.once('data', (text) => resolve(String(text).trim())));
}
