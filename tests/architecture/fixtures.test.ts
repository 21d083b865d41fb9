import { createHash } from 'node:crypto';
import { readFile } from 'node:fs/promises';
import path from 'node:path';
import { expect, test } from 'vitest';
import { z } from 'zod';
import { ROOT, projectFiles } from '../support/project-files.ts';

const LEDGER = 'tests/fixtures/ledger.json';

/** `file` is relative to the project: below tests/fixtures, or below node_modules for files of a package. */
const Entry = z.strictObject({
  file: z.string().regex(/^(tests\/fixtures|node_modules)\//),
  origin: z.string().min(1),
  licence: z.string().min(1),
  pins: z.string().min(1),
  sha256: z.string().regex(/^[0-9a-f]{64}$/),
});

async function readLedger() {
  return z.array(Entry).parse(JSON.parse(await readFile(path.join(ROOT, LEDGER), 'utf8')));
}

test('every fixture stands in the ledger, once', async () => {
  const files = (await projectFiles('tests/fixtures')).filter((file) => file !== LEDGER);
  const entered = (await readLedger()).map((entry) => entry.file);
  expect(new Set(entered).size).toBe(entered.length);
  expect(entered.filter((file) => file.startsWith('tests/fixtures/')).sort()).toEqual(files);
});

test('every fixture has the bytes that the ledger names', async () => {
  const differing: string[] = [];
  for (const entry of await readLedger()) {
    const sha256 = createHash('sha256')
      .update(await readFile(path.join(ROOT, entry.file)))
      .digest('hex');
    if (sha256 !== entry.sha256) differing.push(`${entry.file}: ${sha256}`);
  }
  expect(differing).toEqual([]);
});
