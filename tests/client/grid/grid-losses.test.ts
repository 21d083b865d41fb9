import { expect, test } from 'vitest';
import type { Grid } from '#domain/frame/grid';
import type { Mm } from '#domain/frame/length';
import type { Zone } from '#domain/frame/zone';
import { BUILT_IN } from '#domain/lexicon/lexicon';
import { gridLosses, isLoss, type Placed } from '../../../client/screens/grid/grid-losses.ts';
import { someGrid } from '../../support/some-grid.ts';

const wall = (line: string): Zone => ({
  shape: 'wall',
  family: 'first',
  line,
  from: '二',
  to: '四',
  bottom: 450,
  top: 3000,
  face: 'both',
  over: 'between-posts',
});
const flat: Zone = { shape: 'flat', corners: ['い一', 'は三'], bottom: 300, top: 450 };
const closed = {
  at: '2026-04-01T00:00:00.000Z',
  by: null,
  note: '',
  release: null,
  without: null,
  takenBack: null,
};
const member = (
  from: string,
  more: { to?: string; level?: string; top?: number; retired?: boolean } = {},
) => ({
  // 柱 is a post, 貫 a rail: a post stands from its level to the next.
  kind: more.to === undefined ? '柱' : '貫',
  retired: more.retired ?? false,
  setOut: {
    from,
    to: more.to ?? '',
    level: more.level ?? '1F',
    base: null,
    top: (more.top ?? null) as Mm | null,
    width: null,
    depth: null,
  },
});

const house = (more: Partial<Placed> = {}): Placed => ({
  members: [
    member('ろ三'),
    member('い一', { to: 'ろ一' }),
    member('い一'),
    member('へ六', { level: '2F' }),
    member('ろ四', { retired: true }),
    member('ぬ一'),
    { kind: '柱', retired: false, setOut: null },
  ],
  coverings: [
    { name: 'wall ろ', zone: wall('ろ'), closed },
    { name: 'wall は', zone: wall('は'), closed: null },
    { name: 'floor', zone: flat, closed: null },
    { name: 'list', zone: null, closed: null },
    { name: 'never read', zone: wall('ぬ'), closed: null },
  ],
  lexicon: BUILT_IN,
  ...more,
});

const without = (label: string, grid = someGrid()): Grid => ({
  first: { ...grid.first, lines: grid.first.lines.filter((line) => line.label !== label) },
  second: { ...grid.second, lines: grid.second.lines.filter((line) => line.label !== label) },
  levels: grid.levels.filter((level) => level.label !== label),
});

test('a line taken out takes what stands by it', () => {
  expect(gridLosses(someGrid(), without('ろ'), house())).toEqual({
    coverings: [{ name: 'wall ろ', isClosed: true }],
    members: 2,
  });
  expect(gridLosses(someGrid(), without('は'), house())).toEqual({
    coverings: [
      { name: 'wall は', isClosed: false },
      { name: 'floor', isClosed: false },
    ],
    members: 0,
  });
  expect(gridLosses(someGrid(), without('二'), house()).coverings.map(({ name }) => name)).toEqual([
    'wall ろ',
    'wall は',
  ]);
});
test('a level taken out takes what stands on it, and what reaches up to it as the last', () => {
  expect(gridLosses(someGrid(), without('2F'), house()).members).toBe(1);
  const tops = without('軒', without('2F'));
  // The rail lies at its level and needs none above it.
  expect(gridLosses(someGrid(), tops, house()).members).toBe(3);
});
test('what moves is not lost, nor what had no place before', () => {
  for (const after of [someGrid(), someGrid(909), someGrid(1970)]) {
    const losses = gridLosses(someGrid(), after, house());
    expect(losses).toEqual({ coverings: [], members: 0 });
    expect(isLoss(losses)).toBe(false);
  }
  expect(gridLosses(without('ろ'), someGrid(), house())).toEqual({ coverings: [], members: 0 });
});
test('either is a loss', () => {
  expect(isLoss({ coverings: [], members: 1 })).toBe(true);
  expect(isLoss({ coverings: [{ name: 'wall', isClosed: false }], members: 0 })).toBe(true);
});
