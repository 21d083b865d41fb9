import { spawnSync } from 'node:child_process';
import { mkdtemp, readFile, rm, symlink, writeFile } from 'node:fs/promises';
import os from 'node:os';
import path from 'node:path';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { ROOT } from '../support/project-files.ts';

const FILES: Record<string, string> = {
  'vitest.config.mjs': 'export default {};',
  'good.test.mjs': `
    import { expect, test } from 'vitest';
    test('passes', () => expect(1).toBe(1));
    test('fails', () => expect(1).toBe(2));
    test('gives a reason', (context) => context.skip('no such program'));
    test.skip('gives none', () => undefined);`,
  'broken.test.mjs': "import './nowhere.mjs';",
  'hook.test.mjs': `
    import { beforeAll, describe, test } from 'vitest';
    describe('group', () => {
      beforeAll(() => { throw new Error('hook'); });
      test('never runs', () => undefined);
    });`,
  'stray.test.mjs': `
    import { test } from 'vitest';
    test('passes, but leaves an error behind', () => void Promise.reject(new Error('stray')));`,
};

let folder: string;
beforeAll(async () => {
  folder = await mkdtemp(path.join(os.tmpdir(), 'arakabe-tally-'));
  for (const [name, text] of Object.entries(FILES)) await writeFile(path.join(folder, name), text);
  await symlink(path.join(ROOT, 'node_modules'), path.join(folder, 'node_modules'));
});
afterAll(() => rm(folder, { recursive: true, force: true }));

test('the tally counts a broken file, a failing hook and a stray error as failures, and keeps reasons', async () => {
  const file = path.join(folder, 'tally.json');
  const reporter = path.join(ROOT, 'tests/support/tally-reporter.mjs');
  const vitest = path.join(ROOT, 'node_modules/vitest/vitest.mjs');
  const { status } = spawnSync(
    process.execPath,
    [vitest, 'run', '--root', folder, `--reporter=${reporter}`],
    {
      cwd: folder,
      env: { ...process.env, ARAKABE_TALLY_FILE: file },
    },
  );
  expect(status).not.toBe(0);
  const tally = JSON.parse(await readFile(file, 'utf8')) as {
    passed: number;
    failed: number;
    skipped: object[];
  };
  expect(tally.passed).toBe(2);
  // One failing test, one file, one hook, one stray error.
  expect(tally.failed).toBe(4);
  const reasons = tally.skipped.map((one) => ({
    ...one,
    name: (one as { name: string }).name.replace(/^.*: /, ''),
  }));
  expect(reasons).toEqual(
    expect.arrayContaining([
      { name: 'gives a reason', reason: 'no such program' },
      { name: 'gives none', reason: '' },
      { name: 'group > never runs', reason: '' },
    ]),
  );
});
