import { it } from 'vitest';
import type { ClosingReportInput } from '#domain/record/closing-report';
import { newHouse } from '../support/server.ts';
import { fillHouse } from './fill-house.ts';
import { houseWith } from './house-with.ts';
import { memoryOf, sayTable, seconds, type BenchRow } from './say-table.ts';
import { openSite } from './site.ts';

/** 5,000 members and 50,000 tags; 40 coverings of 250 members each. */
function largeHouse(): ClosingReportInput {
  const house = houseWith(50_000);
  const wide = house.coverings.slice(0, 40).map((covering, c) => ({
    ...covering,
    hides: Array.from({ length: 250 }, (_, i) => ({
      mark: house.members[(c * 125 + i) % house.members.length]?.mark as string,
      least: 'plastered' as const,
    })),
  }));
  return { ...house, coverings: wide.map((one) => ({ ...one, kind: 'floor' as const })) };
}

async function askBoth(kind: 'embedded' | 'PostgreSQL', rows: BenchRow[]): Promise<void> {
  const empty = await openSite(kind);
  if (!empty) return;
  const { id } = await newHouse(empty.client);
  const site = await empty.whileStopped(({ database }) => fillHouse(database, id, largeHouse()));
  const ask = async (address: string) => {
    let size = 0;
    const times = [];
    for (let i = 0; i < 5; i++)
      times.push(
        await seconds(async () => {
          size = (await (await site.client.raw('GET', `/houses/${id}${address}`)).text()).length;
        }),
      );
    return { size, time: Math.min(...times) };
  };
  const report = await ask('/closing-report');
  const ours = await ask('/journal');
  rows.push({
    what: `${kind}, ${(ours.size / 1000).toFixed(0)} kB, memory ${memoryOf(site.server.pid)}`,
    measured: `${(ours.time * 1000).toFixed(0)} ms`,
    bare: `${(report.time * 1000).toFixed(0)} ms, ${(report.size / 1000).toFixed(0)} kB for the whole report`,
    ratio: (report.time / ours.time).toFixed(2),
  });
  await site.end();
}

it('the journal of a large house', async () => {
  const rows: BenchRow[] = [];
  for (const kind of ['embedded', 'PostgreSQL'] as const) await askBoth(kind, rows);
  sayTable('journal of 5,000 members, 40 coverings, 50,000 photos and tags', rows);
});
