import { it } from 'vitest';
import type { StandingTag } from '#domain/record/requirement';
import { reportClosings } from '#domain/record/closing-report';
import { frameHouse, hide, railsInSpace, wallsInSpace } from './frame-house.ts';
import { sayTable, seconds, type BenchRow } from './say-table.ts';

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
