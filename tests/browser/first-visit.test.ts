import { readFile, readdir, stat } from 'node:fs/promises';
import path from 'node:path';
import { afterAll, beforeAll, expect, it } from 'vitest';
import { wordsOf } from '../client/words.ts';
import { ROOT } from '../support/project-files.ts';
import { describeInBrowser, startApp, type App } from './app.ts';
import { signIn } from './hands.ts';
import { KEEPER, prepareSite, type Site } from './site.ts';

/** Slow 4G brings it in 1.1 s, beside all else: 1.6 Mbit/s are 200 kB a second. */
const MOST_SCRIPT = 220_000;
const ASSETS = path.join(ROOT, 'dist', 'client', 'assets');

describeInBrowser('the first visit to a house', () => {
  let app: App;
  let site: Site;

  beforeAll(async () => {
    app = await startApp();
    site = await prepareSite(app.server.origin, app.server.firstLink ?? '', 'Boathouse');
  });
  afterAll(() => app.close());

  it('fetches little script, and that compressed', async () => {
    const before = await app.open();
    await before.goto('/');
    await signIn(before, await wordsOf('en'), KEEPER);
    const page = await app.open({ storageState: await before.context().storageState() });
    const fetched = new Map<string, string | undefined>();
    page.on('response', (response) => {
      const { pathname } = new URL(response.url());
      if (pathname.endsWith('.js')) fetched.set(pathname, response.headers()['content-encoding']);
    });
    const t = await wordsOf('en');
    await page.goto(site.things.house);
    await page.getByRole('heading', { name: t('days.next') }).waitFor();
    await page.waitForFunction(() => !document.querySelector('[aria-busy=true], .spinner'));
    // What is fetched ahead for other screens comes after this one, and counts for none.
    const needed = [...fetched.keys()];
    const sizes = await Promise.all(needed.map(async (name) => [name, await gzipSize(name)] as const));
    const sum = sizes.reduce((all, [, size]) => all + size, 0);
    expect(sum, sizes.map(([name, size]) => `${size} ${name}`).join('\n')).toBeLessThan(MOST_SCRIPT);
    expect(sum).toBeGreaterThan(MOST_SCRIPT / 10);
    // Chromium reads brotli from this machine itself and by HTTPS, and gzip else.
    expect(new Set(fetched.values())).toEqual(new Set(['br']));
  });

  it('is spared what only the server needs: shapes are checked there', async () => {
    const scripts = (await readdir(ASSETS)).filter((name) => name.endsWith('.js'));
    expect(scripts.length).toBeGreaterThan(5);
    // The library of shapes tries to evaluate text, which the page forbids and the browser writes down.
    const holding = await Promise.all(
      scripts.map(async (name) => /ZodError/.test(await readFile(path.join(ASSETS, name), 'utf8'))),
    );
    expect(scripts.filter((_, i) => holding[i])).toEqual([]);
  });
});

/** Of the file that the build has compressed beside it. */
async function gzipSize(pathname: string): Promise<number> {
  return (await stat(path.join(ROOT, 'dist', 'client', `${pathname}.gz`))).size;
}
