import { readFile } from 'node:fs/promises';
import path from 'node:path';
import { expect, test } from 'vitest';
import { ROOT, projectFiles } from '../support/project-files.ts';

// Put together from parts, so that this file does not hold what it looks for.
const slash = '/';
const HOMES = ['work', 'root', 'home', 'Users'];
const MACHINE_PATH = new RegExp(String.raw`(?<![\w.$\{\}/-])${slash}(${HOMES.join('|')})${slash}\w`);
const REGISTRY = new RegExp(
  ['registry\\.', '(npmjs|yarnpkg|npmmirror)|npm\\.', 'pkg\\.github|_auth', 'Token'].join(''),
);
const PRIVATE_KEY = new RegExp(['-----BEGIN [A-Z ]*', 'PRIVATE KEY'].join(''));

/** Pictures and the like; a ledger entry of tests/fixtures says where each comes from. */
const BINARY = /\.(jpe?g|png|heic|avif|webp|gif|tiff?|woff2?|xlsx|zip|pdf|ico)$/i;

function forbiddenIn(text: string): string[] {
  return [MACHINE_PATH, REGISTRY, PRIVATE_KEY].flatMap((pattern) => pattern.exec(text)?.[0] ?? []);
}

test('no file holds a path of a machine, a registry or a secret key', async () => {
  const files = (await projectFiles()).filter(
    (file) => !BINARY.test(file) && !file.startsWith('tests/fixtures/'),
  );
  const found: string[] = [];
  for (const file of files)
    for (const text of forbiddenIn(await readFile(path.join(ROOT, file), 'utf8')))
      found.push(`${file}: ${text}`);
  expect(found).toEqual([]);
});

test.each([
  `cd ${slash}work${slash}place`,
  `'${slash}root${slash}x'`,
  `"${slash}Users${slash}someone"`,
  ['https:', '', ['registry', 'npmjs', 'org'].join('.')].join(slash),
  ['-----BEGIN RSA PRIVATE', 'KEY-----'].join(' '),
])('sees %s', (text) => expect(forbiddenIn(text)).toHaveLength(1));

test.each(['/houses/{house}/work', 'https://example.org/home/x', '../work/', './home/x'])(
  'lets %s pass',
  (text) => expect(forbiddenIn(text)).toEqual([]),
);
