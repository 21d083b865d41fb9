import { it } from 'vitest';
import { reportClosings } from '#domain/record/closing-report';
import { newHouse } from '../support/server.ts';
import { fillHouse } from './fill-house.ts';
import { houseWith } from './house-with.ts';
import { memoryOf, sayTable, seconds, type BenchRow } from './say-table.ts';
import { openSite, type BenchSite } from './site.ts';

const SIZES = [1_000, 10_000, 100_000];

async function best(work: () => unknown): Promise<number> {
  const times = [];
  for (let i = 0; i < 5; i++) times.push(await seconds(work));
  return Math.min(...times);
}

/** By what power of the size the time has grown since the size before. */
function growth(tags: number, time: number, before: { tags: number; time: number } | null): string {
  if (!before) return '';
  return `, growth n^${(Math.log(time / before.time) / Math.log(tags / before.tags)).toFixed(2)}`;
}

it('the closing report', async () => {
  const rows: BenchRow[] = [];
  let before: { tags: number; time: number } | null = null;
  for (const tags of SIZES) {
    const input = houseWith(tags);
    const output = reportClosings(input);
    const bare = await best(() => JSON.stringify(output));
    const ours = await best(() => reportClosings(input));
    rows.push({
      what: `${tags} tags, ${input.members.length} members, ${input.coverings.length} coverings${growth(tags, ours, before)}`,
      measured: `${(ours * 1000).toFixed(1)} ms`,
      bare: `${(bare * 1000).toFixed(1)} ms to write it as JSON`,
      ratio: (bare / ours).toFixed(2),
    });
    before = { tags, time: ours };
  }
  sayTable('closing report from plain values', rows);
});

async function askedOverHttp(kind: 'embedded' | 'PostgreSQL', rows: BenchRow[]): Promise<void> {
  const empty = await openSite(kind);
  if (!empty) return;
  const houses = new Map<number, string>();
  for (const tags of SIZES) houses.set(tags, (await newHouse(empty.client)).id);
  const site: BenchSite = await empty.whileStopped(async ({ database }) => {
    for (const [tags, house] of houses) await fillHouse(database, house, houseWith(tags));
  });
  let before: { tags: number; time: number } | null = null;
  for (const [tags, house] of houses) {
    const input = houseWith(tags);
    const bare = await best(() => JSON.stringify(reportClosings(input)));
    const ask = async () => (await site.client.raw('GET', `/houses/${house}/closing-report`)).text();
    const ours = await best(ask);
    rows.push({
      what: `${tags} tags, ${kind}${growth(tags, ours, before)}, memory ${memoryOf(site.server.pid)}`,
      measured: `${(ours * 1000).toFixed(0)} ms`,
      bare: `${(bare * 1000).toFixed(0)} ms without database and HTTP`,
      ratio: (bare / ours).toFixed(2),
    });
    before = { tags, time: ours };
  }
  await site.end();
}

it('the closing report over HTTP', async () => {
  const rows: BenchRow[] = [];
  for (const kind of ['embedded', 'PostgreSQL'] as const) await askedOverHttp(kind, rows);
  sayTable('closing report over HTTP, from the tables', rows);
});
