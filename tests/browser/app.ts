import { afterEach, beforeEach, describe } from 'vitest';
import type { Browser, BrowserContextOptions, Page } from 'playwright-core';
import type { DatabaseConfig } from '../../server/config.ts';
import { findChromium, launchBrowser } from '../support/chromium.ts';
import { describeOverEitherDatabase, makeServer, type PlaceForDatabase } from '../support/databases.ts';
import { temporaryFolder } from '../support/record.ts';
import { ServerProcess } from '../support/server-process.ts';

/** The built program in a process of its own, and a real browser in front of it. */
export interface App {
  readonly server: ServerProcess;
  readonly dataFolder: string;
  /** A browser of somebody else: own cookies, own storage. */
  open(options?: BrowserContextOptions): Promise<Page>;
  /** Whatever a console or a page complained about since the last call, without what `isExpected`. */
  complaints(isExpected?: RegExp): string[];
  close(): Promise<void>;
}

/** Far from the site, so that a time shown in the browser's zone instead of the house's is noticed. */
export const DESKTOP = {
  viewport: { width: 1280, height: 900 },
  locale: 'en-GB',
  timezoneId: 'America/New_York',
  colorScheme: 'light',
} as const satisfies BrowserContextOptions;

/**
 * Without `make` on PostgreSQL where there is one, which starts sooner and leaves the server's own core alone;
 * else on the embedded database, in the data folder as `npm start` has it.
 */
export async function startApp(make = makeQuick): Promise<App> {
  const place = await make();
  const { folder, remove } = await temporaryFolder();
  const server = await ServerProcess.start({ dataFolder: folder, database: place.config, owner: false });
  const browser = await launchBrowser();
  let complaints: string[] = [];
  return {
    server,
    dataFolder: folder,
    open: (options) => openPage(browser, { ...DESKTOP, baseURL: server.origin, ...options }, complain),
    complaints(isExpected) {
      const heard = complaints.filter((text) => !isExpected?.test(text));
      complaints = [];
      return heard;
    },
    async close() {
      await browser.close();
      await server.stop();
      await remove();
      await place.remove();
    },
  };

  function complain(text: string): void {
    complaints.push(text);
  }
}

/** OpenSeadragon says so when a picture arrives after one has gone on to another. */
export const HARMLESS = /^Ignoring tile .* loaded before reset/;

/** Of every browser that is open now. */
export const openPages = new Set<Page>();

async function openPage(
  browser: Browser,
  options: BrowserContextOptions,
  complain: (text: string) => void,
): Promise<Page> {
  const context = await browser.newContext(options);
  context.setDefaultTimeout(20_000);
  const page = await context.newPage();
  openPages.add(page);
  page.on('close', () => openPages.delete(page));
  page.on('pageerror', (error) => complain(`page error: ${error.stack ?? error.message}`));
  page.on('console', (message) => {
    if (['error', 'warning'].includes(message.type()) && !HARMLESS.test(message.text()))
      complain(`${message.type()}: ${message.text()} ${message.location().url}`);
  });
  return page;
}

async function makeQuick(): Promise<PlaceForDatabase> {
  if (process.env['ARAKABE_TEST_POSTGRES'] !== undefined) return makeServer();
  return { config: { kind: 'embedded', folder: 'in the data folder' }, remove: () => Promise.resolve() };
}

/** Without a browser there is nothing to run; the test command says so and fails where CI=true. */
export const describeInBrowser = describe.skipIf(!findChromium());

export function describeInBrowserOverEitherDatabase(
  name: string,
  body: (make: () => Promise<PlaceForDatabase>, kind: DatabaseConfig['kind']) => void,
): void {
  describeInBrowser('in the browser', () => describeOverEitherDatabase(name, body));
}

/** The tests of a suite are steps of one story: after one that failed the rest would only wait in vain. */
export function inOneGo(): void {
  let isBroken = false;
  beforeEach(({ skip }) => skip(isBroken, 'an earlier step failed'));
  afterEach(({ task }) => {
    isBroken ||= task.result?.state === 'fail';
  });
}
