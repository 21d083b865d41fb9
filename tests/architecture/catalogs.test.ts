import { readFile } from 'node:fs/promises';
import path from 'node:path';
import { pathToFileURL } from 'node:url';
import { describe, expect, test } from 'vitest';
import { enLater } from '../../client/i18n/en-later.ts';
import { compareCatalogs, type Catalog } from '../support/compare-catalogs.ts';
import { ROOT, projectFiles } from '../support/project-files.ts';

const FOLDER = 'client/i18n';

/** File names of one language, e.g. closing-report.ts, which exports closingReport. */
async function catalogNames(language: string): Promise<string[]> {
  const folder = `${FOLDER}/${language}/`;
  const files = await projectFiles(FOLDER);
  return files.filter((file) => file.startsWith(folder)).map((file) => file.slice(folder.length));
}

async function readCatalog(language: string, name: string): Promise<Catalog> {
  const url = pathToFileURL(path.join(ROOT, FOLDER, language, name)).href;
  const module = (await import(url)) as Record<string, Catalog>;
  const constant = name.replace(/\.ts$/, '').replace(/-(.)/g, (_, letter: string) => letter.toUpperCase());
  const catalog = module[constant];
  if (!catalog) throw new Error(`${FOLDER}/${language}/${name} does not export ${constant}.`);
  return catalog;
}

describe('the catalogs of both languages', async () => {
  const english = await catalogNames('en');
  test('are the same files', async () => {
    expect(english).not.toEqual([]);
    expect(await catalogNames('ja')).toEqual(english);
  });
  test.each(english)('say the same things: %s', async (name) => {
    expect(compareCatalogs(await readCatalog('en', name), await readCatalog('ja', name))).toEqual([]);
  });
});

/** Where words that come later are said: `withLaterWords` stands in the route of each (client/app.tsx). */
const WAITING = [
  'check/',
  'shell/not-your-role',
  'screens/account/(?:account-screen|end-sessions|new-password|password-|session-|token-)',
  'screens/bench/(?:doubt-|under-|unread-)',
  'screens/check/',
  'screens/coverings/(?:calendar|closing-release|hold|lacking|outrun|wall|zone)',
  'screens/frame/(?:frame-legend|sheeted-)',
  'screens/guest/',
  'screens/houses/release-rule',
  'screens/ledger/',
  'screens/members/member-(?:history|protections)',
  'screens/people/',
  'screens/protection/',
  'screens/releases/',
  'screens/report/line-row',
  'screens/review/',
  'screens/shots/',
];

test('words that come later are said only where a route waits for them', async () => {
  const waits = new RegExp(`^client/(?:${WAITING.join('|')})`, 'u');
  const areas = Object.keys(enLater).join('|');
  const said = new RegExp(`\\bt\\(\\s*['"\`](?:${areas})\\.`, 'u');
  const files = (await projectFiles('client')).filter((file) => /\.tsx?$/u.test(file));
  const saying: string[] = [];
  for (const file of files) if (said.test(await readFile(path.join(ROOT, file), 'utf8'))) saying.push(file);
  expect(saying.filter((file) => waits.test(file)).length).toBeGreaterThan(3);
  expect(saying.filter((file) => !waits.test(file))).toEqual([]);
});

describe('comparing catalogs', () => {
  test('accepts the plural forms of each language', () => {
    expect(
      compareCatalogs(
        { n_one: '{{count}} photo', n_other: '{{count}} photos' },
        { n_other: '写真{{count}}枚' },
      ),
    ).toEqual([]);
  });
  test('names what is missing, empty or different', () => {
    const en: Catalog = { a: 'A', b: { c: 'C {{mark}}', d: 'D' }, e: ' ' };
    const ja: Catalog = { a: 'あ', b: { c: 'か {{name}}', f: 'ふ' }, e: 'え' };
    expect(compareCatalogs(en, ja)).toEqual([
      'ja lacks b.d',
      'en lacks b.f',
      'b.c: the placeholders differ',
      'en e is empty',
    ]);
  });
});
