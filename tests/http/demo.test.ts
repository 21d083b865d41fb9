import path from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import type { ClosingReportView } from '#domain/contract/report-views';
import type { FindingsView } from '#domain/contract/findings';
import type { HouseView, LedgerEntryView, PhotoDetailView, PhotoView } from '#domain/contract/views';
import { PHOTO_FACTS } from '../../server/demo/render/facts/photo-facts.ts';
import { momentOf, raisingFor } from '../../server/demo/story/build-time.ts';
import type { PhotoRow } from '../../server/demo/story/photo.ts';
import { PHOTOS } from '../../server/demo/story/photos.ts';
import { startDemo, type Demo } from '../../server/start-demo.ts';
import { expectedReport, type OracleLine, type OracleTag } from '../support/demo-oracle.ts';
import { truthOf } from '../support/demo-truth.ts';
import { ROOT } from '../support/project-files.ts';

const PHOTO_FOLDER = path.join(ROOT, 'server/demo/photos');
const now = new Date();
const raising = raisingFor(now);
const said: string[] = [];
let demo: Demo;
let get: <T>(address: string) => Promise<T>;

beforeAll(async () => {
  const order = { port: null, photoFolder: PHOTO_FOLDER, photos: PHOTOS, now };
  const { signal } = new AbortController();
  demo = await startDemo({ ...order, signal, say: (line) => void said.push(line) });
  const { cookie } = await goIn(demo.doors[0]?.address ?? '');
  get = (address) => ask(address, cookie);
}, 180_000);
afterAll(() => demo.stop());

/** As a browser that follows a door. */
async function goIn(address: string): Promise<{ cookie: string; to: string; signedIn: string }> {
  const door = await fetch(address, { redirect: 'manual' });
  const [signedIn = ''] = door.headers.getSetCookie();
  return { cookie: signedIn.split(';')[0] ?? '', to: door.headers.get('location') ?? '', signedIn };
}

async function ask<T>(address: string, cookie: string): Promise<T> {
  const answer = await fetch(`${demo.origin}/api/v1${address}`, { headers: { cookie } });
  return (await answer.json()) as T;
}

async function photosOfHouse(): Promise<PhotoDetailView[]> {
  const { photos } = await get<{ photos: PhotoView[] }>(`/houses/${demo.house}/photos?limit=1000`);
  return Promise.all(photos.map(({ id }) => get<PhotoDetailView>(`/photos/${id}`)));
}

/** Once a machine has looked at every region. */
async function measured(): Promise<PhotoDetailView[]> {
  for (;;) {
    const photos = await photosOfHouse();
    if (photos.every(({ allTags }) => allTags.every(({ legibility }) => legibility.verdict !== null)))
      return photos;
    await new Promise((resolve) => setTimeout(resolve, 100));
  }
}

/** By the table of the photos, which no file and no clock has been through. */
function takenOf({ name }: PhotoRow): string | null {
  const facts = PHOTO_FACTS.find((photo) => photo.name === name);
  return facts?.wallTime ? momentOf(raising, facts.day, facts.time) : null;
}

function rowOf({ fileName }: { fileName: string }): PhotoRow {
  const row = PHOTOS.find((photo) => photo.fileName === fileName);
  if (!row) throw new Error(`${fileName} is in no table.`);
  return row;
}

describe('the doors', () => {
  it.each([
    ['carpenter', '大工 Carpenter', 'owner'],
    ['inspector', '検査員 Inspector', 'inspector'],
    ['builder', '工務店 Builder', 'builder'],
  ])('let in the %s', async (who, name, role) => {
    const address = demo.doors.find((door) => door.address.endsWith(`/${who}`))?.address ?? '';
    const { cookie, to, signedIn } = await goIn(address);
    expect(to).toBe(`${demo.origin}/houses/${demo.house}`);
    expect(signedIn).toMatch(/HttpOnly/i);
    expect(await ask('/session', cookie)).toMatchObject({ account: { name } });
    expect(await ask(`/houses/${demo.house}`, cookie)).toMatchObject({ role });
  });

  it('are listed on a page, and there are no others', async () => {
    const { origin } = new URL(demo.doors[0]?.address ?? '');
    expect((await (await fetch(origin)).text()).match(/href="\/\w+"/g)).toHaveLength(3);
    const none = await fetch(`${origin}/second`, { redirect: 'manual' });
    expect([none.status, none.headers.getSetCookie()]).toEqual([404, []]);
  });
});

describe('the demo house', () => {
  it('has all members, coverings and photos, and about half of the photos are tagged', async () => {
    const { counts } = await get<HouseView>(`/houses/${demo.house}`);
    expect(counts).toMatchObject({ members: 210, coverings: 14, photos: PHOTOS.length });
    expect(said[1]).toBe(`Adding ${counts.photos} photos and ${counts.tags} tags, evening by evening …`);
  });

  it('dates every photo truly, once the clock of the site camera is put right', async () => {
    for (const photo of await photosOfHouse()) {
      const { capture, fileName } = photo;
      const dated = capture.state === 'dated' ? capture.instant : null;
      expect([fileName, dated]).toEqual([fileName, takenOf(rowOf(photo))]);
    }
  });

  it('leaves what is wrong with its photos to be found', async () => {
    const { counts } = await get<FindingsView>(`/houses/${demo.house}/findings`);
    const open = Object.fromEntries(counts.map((count) => [count.kind, count.open]));
    expect(open).toMatchObject({ disputed: 1, 'closed-with-gaps': 1, 'closed-without-release': 1 });
    const trapped = (kind: string) => PHOTO_FACTS.filter(({ trap }) => trap?.kind === kind).length;
    expect(open['off-site'] ?? 0).toBe(trapped('off-site'));
    expect(open['no-date'] ?? 0).toBe(trapped('no-time'));
    expect(counts.every(({ accepted }) => accepted === 0)).toBe(true);
  });

  it('was entered day by day, and from now on by the real clock', async () => {
    const { entries } = await get<{ entries: LedgerEntryView[] }>(`/houses/${demo.house}/ledger?limit=1000`);
    const times = entries.map(({ at }) => Date.parse(at));
    expect(times).toEqual(times.toSorted((a, b) => a - b));
    const days = (times.at(-1)! - times[0]!) / 86_400_000;
    // From the evening of day 28 back to the morning of day -7.
    expect(days).toBeCloseTo(35.46, 1);
    const { asOf } = await get<ClosingReportView>(`/houses/${demo.house}/closing-report`);
    expect(Math.abs(Date.parse(asOf) - Date.now())).toBeLessThan(60_000);
  });

  it('says of photos only what is true of them', async () => {
    for (const photo of await photosOfHouse()) {
      const truth = await truthOf(rowOf(photo));
      expect(photo.allTags.length).toBeLessThanOrEqual(12);
      for (const { mark, stage, region } of photo.allTags) {
        const shown = truth.members.find((member) => member.mark === mark);
        expect(shown).toMatchObject({ stage });
        expect(shown?.ofPicture).toBeGreaterThanOrEqual(0.6);
        const points = region.shape === 'polygon' ? region.points : [];
        const drawn = points.flatMap(([x, y]) => [x * truth.width, y * truth.height]);
        drawn.forEach((value, i) => expect(Math.abs(value - (shown?.outline[i] ?? NaN))).toBeLessThan(0.2));
      }
    }
  });

  it('reports line by line what follows from the truth of its photos', async () => {
    const tags = (await measured()).flatMap((photo) =>
      photo.allTags.map(({ id, mark, stage, stretch, legibility, disputed }): OracleTag => {
        const taken = takenOf(rowOf(photo));
        const doubted = disputed === null ? [] : ['disputed'];
        const against = legibility.verdict === 'unreadable' ? [...doubted, 'unreadable'] : doubted;
        return { id, photo: photo.id, mark, stage, stretch, taken, against };
      }),
    );
    const { days } = await get<ClosingReportView>(`/houses/${demo.house}/closing-report`);
    const coverings = days.flatMap((day) => day.coverings);
    const lines = coverings.flatMap(({ name, lines }) =>
      lines.map((line): OracleLine => ({
        ...{ covering: name, mark: line.mark, state: line.state },
        missing: line.missing.map(({ fromMark, toMark }) => [fromMark ?? '', toMark ?? ''] as const),
        records: line.records.map(({ tag }) => tag).sort(),
        completeAt: line.completeAt,
        miss: line.nearestMiss?.reasons ?? null,
      })),
    );
    const closed = Object.fromEntries(
      coverings.flatMap(({ name, closedAt }) =>
        closedAt === null ? [] : [[name, { at: closedAt, isReleased: name.startsWith('湖側') }]],
      ),
    );
    expect(lines.toSorted(byName)).toEqual(expectedReport(tags, closed).toSorted(byName));
    // A house in which everything happens.
    const [states, misses] = [lines.map(({ state }) => state), lines.flatMap(({ miss }) => miss ?? [])];
    expect(new Set(states)).toEqual(new Set(['on-record', 'gap', 'lost', 'waived']));
    expect(misses).toEqual(expect.arrayContaining(['no-photo', 'part-only', 'before-stage']));
  });
});

const byName = (a: OracleLine, b: OracleLine) => (a.covering + a.mark < b.covering + b.mark ? -1 : 1);
