import { readFile } from 'node:fs/promises';
import path from 'node:path';
import { expect, test } from 'vitest';
import { ROOT, projectFiles } from '../support/project-files.ts';

/** Reads of the environment in any of the forms in which they can be written. */
const READS =
  /\bprocess\s*(\?\.|\.)\s*env\b|\bprocess\s*(\?\.)?\[|from\s+['"](node:)?process['"]|\{[^}]*\benv\b[^}]*\}\s*=\s*process\b/;

test('only the configuration reads the environment of the server', async () => {
  const sources = (await projectFiles('server')).filter((file) => /\.(ts|mjs)$/.test(file));
  const readers: string[] = [];
  for (const file of sources)
    if (READS.test(await readFile(path.join(ROOT, file), 'utf8'))) readers.push(file);
  expect(readers).toEqual(['server/config.ts']);
});

test.each([
  'process.env.HOME',
  "process['env']",
  'const { env } = process',
  "import { env } from 'node:process'",
])('sees %s', (text) => expect(text).toMatch(READS));
