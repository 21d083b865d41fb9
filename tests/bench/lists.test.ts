import { afterAll, beforeAll, it } from 'vitest';
import { BUILT_IN } from '#domain/lexicon/lexicon';
import type { Browser, Page } from 'playwright-core';
import type { MemberView } from '#domain/contract/views';
import { foldTerm } from '#domain/lexicon/track-of-kind';
import { indexMembers, searchMembers } from '../../client/finding/member-index.ts';
import { launchBrowser } from '../support/chromium.ts';
import { fillLongHouse } from '../support/long-house.ts';
import { OWNER } from '../support/server.ts';
import { sayTable, seconds, type BenchRow } from './say-table.ts';
import { openSite, type BenchSite } from './site.ts';

const SIZE = { photos: 10_000, members: 5_000 };
const FRAME_MS = 1000 / 60;
/** A frame is late when it comes a quarter of a frame after its time: clocks are not exact. */
const LATE_MS = FRAME_MS * 1.25;
const WHEELS = 150;

let site: BenchSite;
let browser: Browser;
beforeAll(async () => {
  const empty = await openSite('embedded');
  if (!empty) throw new Error('unreachable');
  site = await empty.whileStopped(async (place) => void (await fillLongHouse(place, empty.house, SIZE)));
  browser = await launchBrowser();
});
afterAll(async () => {
  await browser?.close();
  await site?.end();
});

interface Frames {
  readonly inTime: number;
  readonly total: number;
  readonly worst: number;
}

/** Wheels through the page as a hand does, and reads the time between the frames meanwhile. */
async function wheel(page: Page): Promise<Frames> {
  await page.mouse.move(600, 500);
  await page.evaluate(() => {
    const times: number[] = [];
    Object.assign(window, { times });
    const next = (at: number) => {
      times.push(at);
      requestAnimationFrame(next);
    };
    requestAnimationFrame(next);
  });
  for (let i = 0; i < WHEELS; i++) {
    await page.mouse.wheel(0, 120);
    await page.waitForTimeout(FRAME_MS);
  }
  const times = await page.evaluate(() => (window as unknown as { times: number[] }).times);
  const gaps = times.slice(1).map((at, i) => at - (times[i] ?? at));
  return {
    inTime: gaps.filter((gap) => gap <= LATE_MS).length,
    total: gaps.length,
    worst: Math.max(...gaps),
  };
}

const share = ({ inTime, total }: Frames) => inTime / total;
const say = (frames: Frames) =>
  `${(share(frames) * 100).toFixed(1)} % of ${frames.total} frames, longest ${frames.worst.toFixed(0)} ms`;

async function newPage(): Promise<Page> {
  const context = await browser.newContext({
    baseURL: site.server.origin,
    viewport: { width: 1280, height: 900 },
  });
  await context.request.post('/api/v1/session', { data: OWNER });
  return context.newPage();
}

/** As many empty boxes of the same size in a plain page. */
async function boxes(page: Page): Promise<void> {
  await page.setContent(
    `<style>body{margin:0}ul{display:flex;flex-wrap:wrap;gap:8px;margin:0 80px;padding:0;list-style:none}
     li{width:180px;height:135px;background:#ebe3d2}</style><ul>${'<li></li>'.repeat(SIZE.photos)}</ul>`,
  );
}

it('scrolling the wall of photos', async () => {
  const rows: BenchRow[] = [];
  for (const round of [1, 2]) {
    const plain = await newPage();
    await boxes(plain);
    await plain.waitForTimeout(1000);
    const bare = await wheel(plain);
    await plain.context().close();
    const page = await newPage();
    await page.goto(`/houses/${site.house}/photos`);
    await page.locator('.photos-tile img').first().waitFor();
    await page.waitForTimeout(1000);
    const ours = await wheel(page);
    await page.context().close();
    rows.push({
      what: `${SIZE.photos} photos, wheel, round ${round}`,
      measured: say(ours),
      bare: `${say(bare)}, as many empty boxes`,
      ratio: (share(ours) / share(bare)).toFixed(2),
    });
  }
  sayTable('frames within 1/60 s while scrolling (aim: ratio ≥ 0.9)', rows);
});

it('jumping to the end of the wall', async () => {
  const page = await newPage();
  await page.goto(`/houses/${site.house}/photos`);
  await page.locator('.photos-tile img').first().waitFor();
  const waited = () =>
    page.waitForFunction(() => {
      const inSight = Array.from(document.querySelectorAll('.photos-tile')).filter((tile) => {
        const { top, bottom } = tile.getBoundingClientRect();
        return bottom > 0 && top < innerHeight;
      });
      const drawn = inSight.filter((tile) => tile.querySelector('img')?.complete);
      return scrollY > 50_000 && drawn.length > 10 && drawn.length === inSight.length;
    });
  const ours = await seconds(async () => {
    await page.keyboard.press('End');
    await waited();
  });
  const fetched = await page.evaluate(async (house) => {
    const list = await fetch(`/api/v1/houses/${house}/photos?dated=0&order=newest-day&limit=60`);
    const { photos } = (await list.json()) as { photos: { id: string }[] };
    const start = performance.now();
    const again = await fetch(`/api/v1/houses/${house}/photos?dated=0&order=newest-day&limit=60&offset=0`);
    await again.json();
    await Promise.all(
      photos
        .slice(0, 40)
        .map(async ({ id }) =>
          (await fetch(`/api/v1/photos/${id}/thumb?again`, { cache: 'no-store' })).blob(),
        ),
    );
    return (performance.now() - start) / 1000;
  }, site.house);
  await page.context().close();
  sayTable('End key in a wall of 10,000', [
    {
      what: 'until every picture in sight is there (120 ms of it: whether one really stops)',
      measured: `${(ours * 1000).toFixed(0)} ms`,
      bare: `${(fetched * 1000).toFixed(0)} ms to fetch one page and 40 pictures alone`,
      ratio: (fetched / ours).toFixed(2),
    },
  ]);
});

it('finding a member at each key', async () => {
  const { members } = await site.client.get<{ members: MemberView[] }>(`/houses/${site.house}/members`);
  const index = indexMembers(members, BUILT_IN);
  const texts = index.entries.map(({ mark, words }) => `${mark}\n${words}`);
  const typed = ['n', 'nu', 'nuk', 'nuki', '貫', '貫 ろ', 'ろ通り', 'ろ通り貫1', 'tie rail', 'zzz'];
  /** Each key at its best of ten, so that it is this work that is measured and not what else the machine does. */
  const worst = async (work: (text: string) => unknown) => {
    const best = async (text: string) => {
      const times = [];
      for (let i = 0; i < 10; i++) times.push(await seconds(() => work(text)));
      return Math.min(...times);
    };
    return Math.max(...(await inTurn(typed, best))) * 1000;
  };
  const ours = await worst((text) => searchMembers(index, text));
  const bare = await worst((text) => {
    const folded = foldTerm(text);
    return texts.filter((all) => all.includes(folded));
  });
  sayTable('finding a member, the slowest of ten keys (aim: under 16 ms)', [
    {
      what: `${members.length} members`,
      measured: `${ours.toFixed(2)} ms`,
      bare: `${bare.toFixed(2)} ms, includes over the same texts`,
      ratio: (bare / ours).toFixed(2),
    },
  ]);
});

async function inTurn<T, R>(items: readonly T[], work: (item: T) => Promise<R>): Promise<R[]> {
  const results: R[] = [];
  for (const item of items) results.push(await work(item));
  return results;
}
