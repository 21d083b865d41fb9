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
    await page.addInitScript(noteWhenThere, t('days.next'));
    await page.goto(site.things.house);
    await page.getByRole('heading', { name: t('days.next') }).waitFor();
    await page.waitForFunction(() => performance.getEntriesByName('there').length > 0);
    // What is fetched ahead for other screens comes after this one, and counts for none.
    const needed = await page.evaluate(() => {
      const there = performance.getEntriesByName('there')[0]?.startTime ?? 0;
      const names = performance
        .getEntriesByType('resource')
        .filter(({ startTime }) => startTime <= there)
        .map(({ name }) => new URL(name).pathname);
      return [...new Set(names)].filter((name) => name.endsWith('.js'));
    });
    expect(needed.filter((name) => !fetched.has(name))).toEqual([]);
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

/** Runs in the page: marks the moment at which the screen with this heading stands, and nothing of it is to come. */
function noteWhenThere(heading: string): void {
  const look = () => {
    const titles = Array.from(document.querySelectorAll('h2'), ({ textContent }) => textContent.trim());
    if (!titles.includes(heading) || document.querySelector('[aria-busy=true], .spinner')) return;
    performance.mark('there');
    watch.disconnect();
  };
  const watch = new MutationObserver(look);
  watch.observe(document, { childList: true, subtree: true, attributes: true });
}

/** Of the file that the build has compressed beside it. */
async function gzipSize(pathname: string): Promise<number> {
  return (await stat(path.join(ROOT, 'dist', 'client', `${pathname}.gz`))).size;
}
