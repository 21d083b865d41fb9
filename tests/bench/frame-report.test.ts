import { randomUUID } from 'node:crypto';
import { it } from 'vitest';
import type { UploadOutcome } from '#domain/contract/views';
import type { StandingTag } from '#domain/record/requirement';
import { reportClosings } from '#domain/record/closing-report';
import { makeJpeg, takenAt } from '../support/pictures.ts';
import type { Client } from '../support/server.ts';
import { fillHouse } from './fill-house.ts';
import { BAY, READER, frameHouse, hide, railsInSpace, wallsInSpace } from './frame-house.ts';
import { houseWith } from './house-with.ts';
import { sayTable, seconds, type BenchRow } from './say-table.ts';
import { openSite } from './site.ts';

/** Members; tags are twenty times as many, coverings eight in a hundred. */
const SIZES = [1_250, 2_500, 5_000, 10_000];
const MEMBERS = 10_000;
const ZONES = [100, 200, 400, 800];

async function best(work: () => unknown): Promise<number> {
  const times = [];
  for (let i = 0; i < 3; i++) times.push(await seconds(work));
  return Math.min(...times);
}

/** The exponent of growth: the slope of the least-squares line through the logarithms of size and time. */
function exponent(points: readonly (readonly [size: number, time: number])[]): string {
  const logs = points.map(([size, time]) => [Math.log(size), Math.log(time)] as const);
  const mean = (of: 0 | 1) => logs.reduce((sum, point) => sum + point[of], 0) / logs.length;
  const [x, y] = [mean(0), mean(1)];
  const slope =
    logs.reduce((sum, [a, b]) => sum + (a - x) * (b - y), 0) /
    logs.reduce((sum, [a]) => sum + (a - x) ** 2, 0);
  return `n^${slope.toFixed(2)}`;
}

/** What any report has to do at least: look at each tag once and sort them by member. */
function barePass(tags: readonly StandingTag[]): number {
  const lengths = new Map<string, number>();
  for (const { mark, stretch } of tags)
    lengths.set(mark, (lengths.get(mark) ?? 0) + (stretch ? stretch.to - stretch.from : 0));
  return lengths.size;
}

function row(what: string, ours: number, bare: number, ofBare: string): BenchRow {
  const ms = (time: number) => `${(time * 1000).toFixed(1)} ms`;
  return { what, measured: ms(ours), bare: `${ms(bare)} ${ofBare}`, ratio: (bare / ours).toFixed(3) };
}

it('the closing report with stretches', async () => {
  const rows: BenchRow[] = [];
  const points: [number, number][] = [];
  for (const size of SIZES) {
    const input = frameHouse(size);
    const ours = await best(() => reportClosings(input));
    const bare = await best(() => barePass(input.tags));
    points.push([size, ours]);
    const { hidden } = reportClosings(input).counts;
    rows.push(
      row(
        `${String(size)} members, ${String(input.tags.length)} tags, ${String(input.coverings.length)} coverings, ${String(hidden)} lines`,
        ...([ours, bare, 'for one pass over the tags'] as const),
      ),
    );
  }
  sayTable(`closing report with stretches, grows by ${exponent(points)}`, rows);
});

it('what zones hide', async () => {
  const members = railsInSpace(MEMBERS);
  const rows: BenchRow[] = [];
  const points: [number, number][] = [];
  for (const count of ZONES) {
    const walls = wallsInSpace(count);
    const ours = await best(() => hide(members, walls));
    let far = 0;
    const bare = await best(() => {
      for (let i = 0; i < count; i++) for (const { axis } of members) if (axis.start.x > i * 100) far++;
    });
    points.push([count, ours]);
    const what = `${String(MEMBERS)} members, ${String(count)} zones`;
    rows.push(row(what, ours, bare, `for one comparison of each with each${far < 0 ? '!' : ''}`));
  }
  sayTable(`what zones hide, grows by ${exponent(points)}`, rows);
});

it('one tag on a large house, over HTTP', async () => {
  const rows: BenchRow[] = [];
  for (const kind of ['embedded', 'PostgreSQL'] as const) await tagOn(kind, rows);
  sayTable('one new tag on 5,000 members with 100,000 tags and 400 zones', rows);
});

async function tagOn(kind: 'embedded' | 'PostgreSQL', rows: BenchRow[]): Promise<void> {
  const empty = await openSite(kind);
  if (!empty) return;
  const { house } = empty;
  const size = 5_000;
  await stateFrame(empty.client, house, size);
  const { results } = await empty.client.upload<{ results: UploadOutcome[] }>(house, [
    { name: 'a.jpg', bytes: await makeJpeg(77, takenAt('2026-04-03T09:30:00')) },
  ]);
  const [outcome] = results;
  if (!outcome || outcome.outcome === 'refused') throw new Error('refused');
  const site = await empty.whileStopped(({ database }) =>
    fillHouse(database, house, { ...houseWith(100_000), members: [], coverings: [], tags: tagsOf(size) }),
  );
  const tag = () => ({
    ...{ id: randomUUID(), mark: 'R1', stage: 'pegged', stretch: { from: 'y1', to: 'y2' } },
    region: { shape: 'rectangle', x: 0.1, y: 0.2, w: 0.3, h: 0.4 },
  });
  const said = await best(() => site.client.post(`/photos/${outcome.photo.id}/tags`, tag()));
  for (const path of ['closing-report', 'frame', 'coverings']) {
    const read = await best(async () => (await site.client.raw('GET', `/houses/${house}/${path}`)).text());
    rows.push(row(`${kind}: read ${path} anew`, read, said, 'to say the tag'));
  }
  await site.end();
}

function tagsOf(size: number): ReturnType<typeof houseWith>['tags'] {
  return houseWith(100_000).tags.map((tag, i) => ({ ...tag, mark: `R${String(i % size)}` }));
}

async function stateFrame(client: Client, house: string, size: number): Promise<void> {
  await client.put(`/houses/${house}/grid`, { ...READER.grid, unit: 'mm' });
  const schedule = railsInSpace(size).map(({ mark, axis: { start, end } }) => {
    const crossing = ({ x, y }: typeof start) => `x${String(1 + x / BAY)}-y${String(1 + y / BAY)}`;
    return [mark, '貫', crossing(start), crossing(end), '1F', start.z - 450].join(',');
  });
  await client.raw('POST', `/houses/${house}/schedule?fileName=frame.csv`, {
    body: ['番付,種類,始点,終点,階,下端', ...schedule].join('\n'),
    headers: { 'content-type': 'text/csv' },
  });
  for (const { id: name, kind, zone } of wallsInSpace((size * 8) / 100))
    await client.post(`/houses/${house}/coverings`, {
      ...{ id: randomUUID(), name, kind, zone, hides: [], plannedDay: '2026-05-01' },
    });
}
