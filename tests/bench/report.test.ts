import { it } from 'vitest';
import { STAGES, type Stage } from '#domain/frame/stage';
import { reportClosings, type ClosingReportInput } from '#domain/record/closing-report';
import { sayTable, seconds, type BenchRow } from './say-table.ts';

const SIZES = [1_000, 10_000, 100_000];

/** Ten tags a member, a covering for each fifty members, every member hidden by two of them. */
function houseWith(tags: number): ClosingReportInput {
  const marks = Array.from({ length: tags / 10 }, (_, i) => `${'いろはにほへとちりぬ'[i % 10]}${i}`);
  const coverings = Array.from({ length: Math.ceil(marks.length / 50) }, (_, c) => ({
    id: `00000000-0000-4000-8000-${String(c).padStart(12, '0')}`,
    name: `Wall ${c}`,
    kind: 'plaster' as const,
    plannedDay: `2026-05-${String((c % 28) + 1).padStart(2, '0')}`,
    closedAt: c % 3 === 0 ? '2026-04-20T00:00:00.000Z' : null,
    closedDay: c % 3 === 0 ? '2026-04-20' : null,
    hides: Array.from({ length: 100 }, (_, i) => ({
      mark: marks[(c * 50 + i) % marks.length] as string,
      least: 'pegged' as const,
    })),
  }));
  return {
    members: marks.map((mark) => ({ mark, kind: '貫', place: '一階', retired: false })),
    coverings,
    tags: Array.from({ length: tags }, (_, i) => ({
      id: `10000000-0000-4000-8000-${String(i).padStart(12, '0')}`,
      photo: `20000000-0000-4000-8000-${String(i).padStart(12, '0')}`,
      mark: marks[i % marks.length] as string,
      stage: STAGES[i % 4] as Stage,
      instant: i % 13 === 0 ? null : new Date(Date.UTC(2026, 3, 1, 0, i % 40_000)).toISOString(),
    })),
    asOf: '2026-05-01T00:00:00.000Z',
    today: '2026-05-01',
  };
}

async function best(work: () => unknown): Promise<number> {
  const times = [];
  for (let i = 0; i < 5; i++) times.push(await seconds(work));
  return Math.min(...times);
}

it('the closing report', async () => {
  const rows: BenchRow[] = [];
  let before: { tags: number; time: number } | null = null;
  for (const tags of SIZES) {
    const input = houseWith(tags);
    const output = reportClosings(input);
    const bare = await best(() => JSON.stringify(output));
    const ours = await best(() => reportClosings(input));
    const growth: string = before
      ? `, growth n^${(Math.log(ours / before.time) / Math.log(tags / before.tags)).toFixed(2)}`
      : '';
    rows.push({
      what: `${tags} tags, ${input.members.length} members, ${input.coverings.length} coverings${growth}`,
      measured: `${(ours * 1000).toFixed(1)} ms`,
      bare: `${(bare * 1000).toFixed(1)} ms to write it as JSON`,
      ratio: (bare / ours).toFixed(2),
    });
    before = { tags, time: ours };
  }
  sayTable('closing report from plain values', rows);
});
