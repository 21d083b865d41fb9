import { createServer } from 'node:http';
import type { AddressInfo } from 'node:net';
import { expect, it } from 'vitest';
import type { Browser } from 'playwright-core';
import { findChromium, launchBrowser } from '../support/chromium.ts';
import { OWNER } from '../support/server.ts';
import { makeJpeg } from '../support/pictures.ts';
import type { UploadOutcome } from '#domain/contract/views';
import { sayTable, type BenchRow } from './say-table.ts';
import { openSite, type BenchSite } from './site.ts';

const RUNS = 5;
/** Slow 4G as Chromium's own tools have it, and a telephone of a few years ago (both from memory). */
const LINE = { offline: false, latency: 150, downloadThroughput: 1.6e6 / 8, uploadThroughput: 750e3 / 8 };
const SLOWER = 4;
const PHONE = { viewport: { width: 390, height: 844 }, deviceScaleFactor: 2, hasTouch: true, isMobile: true };

interface Visit {
  readonly address: string;
  /** Something of what one came for, once it is there. */
  readonly sign: string;
  /** Files from an earlier visit are still there. */
  readonly isAgain?: boolean;
}

it.skipIf(!findChromium())('the first visit over a slow line', async () => {
  const site = await openSite('embedded');
  if (!site) return;
  const [browser, empty] = [await launchBrowser(), await serveEmptyPage()];
  const photo = await addPhoto(site);
  const house = `${site.server.origin}/houses/${site.house}`;
  const bare = await best(browser, site, { address: empty.address, sign: 'h1' });
  const rows: BenchRow[] = [];
  const visits: [string, Visit][] = [
    ['a house, nothing kept', { address: house, sign: '.page h2' }],
    ['a house, once more', { address: house, sign: '.page h2', isAgain: true }],
    ['its report, nothing kept', { address: `${house}/report`, sign: '.empty-state' }],
    ['a photo to tag, nothing kept', { address: `${house}/photos/${photo}`, sign: 'canvas' }],
    ['signing in, nothing kept', { address: `${site.server.origin}/sign-in`, sign: 'form' }],
  ];
  for (const [what, visit] of visits) {
    const ours = await best(browser, site, visit);
    rows.push({
      what,
      measured: `${ours.toFixed(0)} ms`,
      bare: `${bare.toFixed(0)} ms for an empty page`,
      ratio: (bare / ours).toFixed(2),
    });
  }
  sayTable(`usable at 1.6 Mbit/s, 150 ms, processor ${SLOWER} times slower; best of ${RUNS}`, rows);
  await browser.close();
  empty.close();
  await site.end();
});

async function best(browser: Browser, site: BenchSite, visit: Visit): Promise<number> {
  const times = [];
  for (let run = 0; run < RUNS; run++) times.push(await timeVisit(browser, site, visit));
  return Math.min(...times);
}

/** From the first byte asked for until the sign is there, on a telephone that has never been here. */
async function timeVisit(browser: Browser, site: BenchSite, visit: Visit): Promise<number> {
  const context = await browser.newContext(PHONE);
  if (!visit.address.endsWith('/sign-in'))
    await context.request.post(`${site.server.origin}/api/v1/session`, { data: OWNER });
  const page = await context.newPage();
  if (visit.isAgain) {
    await page.goto(visit.address);
    await page.locator(visit.sign).first().waitFor();
  }
  const session = await context.newCDPSession(page);
  await session.send('Network.enable');
  await session.send('Network.emulateNetworkConditions', LINE);
  await session.send('Emulation.setCPUThrottlingRate', { rate: SLOWER });
  await page.goto(visit.address, { waitUntil: 'commit' });
  const time = await page.waitForFunction(
    (sign) => document.querySelector(sign) !== null && performance.now(),
    visit.sign,
  );
  const ms = Number(await time.jsonValue());
  expect(ms).toBeGreaterThan(0);
  await context.close();
  return ms;
}

async function addPhoto({ client, house }: BenchSite): Promise<string> {
  const photo = { name: 'frame.jpg', bytes: await makeJpeg(1, {}, { width: 1600, height: 1200 }) };
  const { results } = await client.upload<{ results: UploadOutcome[] }>(house, [photo]);
  const [outcome] = results;
  if (!outcome || outcome.outcome === 'refused') throw new Error('The photo was refused.');
  return outcome.photo.id;
}

async function serveEmptyPage(): Promise<{ address: string; close(): void }> {
  const page = '<!doctype html><html lang="en"><title>Empty</title><h1>Empty</h1>';
  const server = createServer((_req, res) => {
    res.setHeader('content-type', 'text/html');
    res.end(page);
  });
  await new Promise<void>((resolve) => server.listen(0, '127.0.0.1', resolve));
  const { port } = server.address() as AddressInfo;
  return { address: `http://127.0.0.1:${port}/`, close: () => void server.close() };
}
