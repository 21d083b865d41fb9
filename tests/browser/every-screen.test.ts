import { afterAll, afterEach, beforeAll, expect, it } from 'vitest';
import type { BrowserContextOptions, Page } from 'playwright-core';
import type { Language } from '../../client/i18n/language.ts';
import { wordsOf } from '../client/words.ts';
import { describeInBrowser, DESKTOP, startApp, type App } from './app.ts';
import { violations } from './checks/axe.ts';
import { hiddenFocus } from './checks/focus.ts';
import { wrongLineStarts } from './checks/line-starts.ts';
import { nameless } from './checks/names.ts';
import { spilt } from './checks/overflow.ts';
import { smallTargets } from './checks/targets.ts';
import { signIn } from './hands.ts';
import { isLookedAt, openScreen, photograph, resultFile } from './screens.ts';
import { KEEPER, prepareSite, type Site } from './site.ts';
import { momentsOf, prepareMore, screensOf, type View } from './views.ts';

const PHONE = { width: 390, height: 844 };
const NARROW = { width: 320, height: 693 };
const touch = { viewport: PHONE, deviceScaleFactor: 2, hasTouch: true, isMobile: true };

/** Of a hundred and more views, where others work on the same machine. */
const WALK_MS = 900_000;

type Check = (page: Page, view: View) => Promise<string[]>;

describeInBrowser('every screen', () => {
  let app: App;
  let site: Site;
  let views: View[];

  beforeAll(async () => {
    app = await startApp();
    site = await prepareSite(app.server.origin, app.server.firstLink ?? '', 'Boathouse');
    const more = await prepareMore(site);
    views = [...screensOf(site, more), ...momentsOf(site, more)];
  });
  // Chromium writes down each refusal that the moments bring about.
  afterEach(() => expect(app.complaints(/responded with a status of 4\d\d/)).toEqual([]));
  afterAll(() => app.close());

  /** Every screen and moment in one language, and what the checks found at each. */
  async function walk(lang: Language, options: BrowserContextOptions, check: Check): Promise<string[]> {
    const t = await wordsOf(lang);
    const locale = lang === 'ja' ? 'ja-JP' : 'en-GB';
    const [known, stranger] = [
      await app.open({ ...options, locale }),
      await app.open({ ...options, locale }),
    ];
    await known.goto('/');
    await signIn(known, t, KEEPER);
    const found: string[] = [];
    for (const view of views) {
      const { name, address, enter, isSignedOut } = view;
      const page = isSignedOut ? stranger : known;
      await openScreen(page, address);
      // One moment that cannot be brought about hides nothing of the others.
      const stuck = await enter?.(page, t).then(() => null, String);
      const faults = stuck ? [stuck] : await check(page, view);
      found.push(...faults.map((fault) => `${name}, ${lang}: ${fault}`));
    }
    await known.context().close();
    await stranger.context().close();
    return found;
  }

  it(
    'passes axe in English by day and by night, and shows where the focus is',
    { timeout: WALK_MS },
    async () => {
      const check: Check = async (page, { name, enter }) => {
        await photograph(page, `desktop-light-${name}`);
        if (!enter && isLookedAt) await print(page, name);
        const found = [...(await violations(page, 'light')), ...(await nameless(page))];
        // Where time is short the night of a phone has to do: its colours are the same.
        if (isLookedAt) {
          await page.emulateMedia({ colorScheme: 'dark' });
          await photograph(page, `desktop-dark-${name}`);
          found.push(...(await violations(page, 'dark')));
          await page.emulateMedia({ colorScheme: 'light' });
        }
        return [...found, ...(await hiddenFocus(page))];
      };
      expect(await walk('en', DESKTOP, check)).toEqual([]);
    },
  );

  it(
    'passes axe on a phone in Japanese by day and by night, with room for a thumb',
    { timeout: WALK_MS },
    async () => {
      const check: Check = async (page, { name }) => {
        await photograph(page, `phone-390-ja-${name}`);
        const found = [...(await violations(page, 'light')), ...(await nameless(page))];
        found.push(...(await smallTargets(page)));
        await page.emulateMedia({ colorScheme: 'dark' });
        found.push(...(await violations(page, 'dark')));
        await page.emulateMedia({ colorScheme: 'light' });
        return [...found, ...(await spiltOnPhones(page))];
      };
      expect(await walk('ja', touch, check)).toEqual([]);
    },
  );

  // A walk of its own through all screens; where time is short the Japanese one, has to do.
  it.runIf(isLookedAt)(
    'has room for a thumb and spills no word on a phone in English',
    { timeout: WALK_MS },
    async () => {
      const check: Check = async (page) => [...(await smallTargets(page)), ...(await spiltOnPhones(page))];
      expect(await walk('en', touch, check)).toEqual([]);
    },
  );
});

/** As it comes out of a printer: for people to look at. */
async function print(page: Page, name: string): Promise<void> {
  await page.pdf({ path: await resultFile(`print-${name}.pdf`), preferCSSPageSize: true, format: 'A4' });
}

async function spiltOnPhones(page: Page): Promise<string[]> {
  const found: string[] = [];
  for (const viewport of [PHONE, NARROW]) {
    await page.setViewportSize(viewport);
    const faults = [...(await spilt(page)), ...(await wrongLineStarts(page))];
    found.push(...faults.map((fault) => `at ${viewport.width} px: ${fault}`));
  }
  await page.setViewportSize(PHONE);
  return found;
}
