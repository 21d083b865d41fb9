import { describe, expect, test } from 'vitest';
import type { Region, UnitPoint } from '#domain/photo/region';
import type { BenchState, Hit } from '../../../client/screens/bench/bench-model.ts';
import type { BenchTag } from '../../../client/screens/bench/bench-tags.ts';
import { START, reduceBench, type BenchEvent } from '../../../client/screens/bench/bench-state.ts';
import { crossedTag } from '../../../client/screens/bench/crossed-tag.ts';
import { nextInRow } from '../../../client/screens/bench/next-in-row.ts';
import { keepTool, readTool } from '../../../client/screens/bench/kept-tool.ts';
import { memoryStorage } from '../memory-storage.ts';

const NOTHING: Hit = { on: 'nothing' };
const box = (x: number, y: number, w: number, h: number): Region => ({ shape: 'rectangle', x, y, w, h });
const post = box(0.2, 0.2, 0.4, 0.6);
const tag = (id: string, region = post, state = 'standing') => ({ id, region, state }) as BenchTag;
const press = (at: UnitPoint): BenchEvent => ({
  type: 'press',
  at,
  hit: NOTHING,
  reach: [0.01, 0.01],
  small: [0.1, 0.1],
});
const play = (...events: BenchEvent[]): BenchState => events.reduce(reduceBench, START);
const cutTag: BenchEvent[] = [
  { type: 'choose-tool', tool: 'split' },
  press([0.1, 0.5]),
  { type: 'release', at: [0.9, 0.5], crossed: tag('a') },
];

describe('splitting on the bench', () => {
  test('of a tag changes it to the first piece, and the other waits', () => {
    const { work, selected } = play(...cutTag);
    expect(work.draft).toMatchObject({ replaces: 'a', region: { y: 0.2, h: expect.closeTo(0.3) as number } });
    expect(work.waiting).toMatchObject([{ y: 0.5, h: expect.closeTo(0.3) as number }]);
    expect(selected).toBe('a');
  });
  test('once done, the hand draws on', () => expect(play(...cutTag).tool).toBe('rectangle'));
  test('what waits comes to its words after what was placed', () => {
    const placed = reduceBench(play(...cutTag), { type: 'placed' });
    expect(placed.work.draft).toMatchObject({ replaces: null, region: { y: 0.5 } });
    expect(placed.work.waiting).toEqual([]);
    expect(reduceBench(placed, { type: 'placed' }).work.draft).toBeNull();
  });
  test('of a drawing leaves both pieces new, and undo makes it whole', () => {
    const drawn = play({ type: 'also-here', region: post });
    const split = reduceBench(drawn, { type: 'halve', tag: null, tallness: 1 });
    expect(split.work).toMatchObject({
      draft: { replaces: null },
      waiting: [{ y: expect.closeTo(0.5) as number }],
    });
    expect(reduceBench(split, { type: 'undo' }).work).toEqual(drawn.work);
  });
  test('twice makes three', () => {
    const halve = { type: 'halve', tag: null, tallness: 1 } as const;
    const { work } = play({ type: 'also-here', region: post }, halve, halve);
    expect(work.waiting).toHaveLength(2);
  });
  test('by a line through nothing changes nothing', () => {
    const { work, past } = play(...cutTag.slice(0, 2), { type: 'release', at: [0.9, 0.5], crossed: null });
    expect([work, past]).toEqual([START.work, []]);
  });
});

describe('the tag that a line goes through', () => {
  const line = [
    [0, 0.5],
    [1, 0.5],
  ] as const;
  const small = tag('small', box(0.3, 0.4, 0.1, 0.2));
  test('is the smallest', () => expect(crossedTag([tag('large'), small], null, line)?.id).toBe('small'));
  test('but the chosen one before all', () =>
    expect(crossedTag([tag('large'), small], 'large', line)?.id).toBe('large'));
  test('and never one that no longer stands, or lies beside', () => {
    const others = [tag('gone', post, 'withdrawn'), tag('beside', box(0, 0, 0.1, 0.1))];
    expect(crossedTag(others, 'gone', line)).toBeNull();
  });
});

describe('in a row', () => {
  const fresh = { mark: 'い二', stage: 'pegged', note: '' } as const;
  const desk = (bench: BenchState) => ({ bench, entry: fresh, fresh, left: null });
  const drawn = play({ type: 'also-here', region: post });
  test('a fresh drawing is the next member', () => expect(nextInRow(desk(drawn))).toEqual(fresh));
  test('what changes a tag, or was split, is asked about', () => {
    expect(nextInRow(desk(play({ type: 'change', tag: tag('a') })))).toBeNull();
    const split = reduceBench(drawn, { type: 'halve', tag: null, tallness: 1 });
    expect(nextInRow(desk(split))).toBeNull();
  });
  test('so is one whose next member or stage is not known', () => {
    expect(nextInRow({ ...desk(drawn), fresh: { ...fresh, mark: '' } })).toBeNull();
    expect(nextInRow({ ...desk(drawn), fresh: { ...fresh, stage: null } })).toBeNull();
  });
});

describe('the tool in the hand', () => {
  test('stays from photo to photo, but for the one that is used once', () => {
    const storage = memoryStorage();
    expect(readTool(storage)).toBe('look');
    keepTool(storage, 'tap');
    keepTool(storage, 'split');
    expect(readTool(storage)).toBe('tap');
    expect(readTool(null)).toBe('look');
  });
});
