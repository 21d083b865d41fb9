import { describe, expect, test } from 'vitest';
import type { TagFactsInput, TagWrite } from '../../../client/outbox/outbox.ts';
import type { BenchTag } from '../../../client/screens/bench/bench-tags.ts';
import { lastSize } from '../../../client/screens/bench/last-size.ts';
import { lastStanding } from '../../../client/screens/bench/last-said.ts';

const tag = (id: string, mark: string, minute: number, more: Partial<BenchTag> = {}) =>
  ({
    id,
    mark,
    stage: 'pegged',
    state: 'standing',
    at: `2026-04-01T09:0${minute}:00.000Z`,
    region: { shape: 'rectangle', x: 0, y: 0, w: 0.1 * (minute + 1), h: 0.5 },
    ...more,
  }) as BenchTag;
const tags = [tag('b', 'い二', 2), tag('c', 'い三', 3), tag('a', 'い一', 1)];
const withdraw = (id: string): TagWrite => ({
  is: 'withdraw',
  tag: id,
  reason: '',
  facts: { mark: 'い三', stage: 'pegged' } as TagFactsInput,
});

describe('what was said last, once something is taken back', () => {
  test('is what stands: the row goes on from there', () =>
    expect(lastStanding(withdraw('c'), tags)?.mark).toBe('い二'));
  test('is not what was withdrawn or replaced before', () => {
    const some = [tag('a', 'い一', 1), tag('b', 'い二', 2, { state: 'withdrawn' }), tag('c', 'い三', 3)];
    expect(lastStanding(withdraw('c'), some)?.mark).toBe('い一');
  });
  test('is nothing where nothing stands', () =>
    expect(lastStanding(withdraw('c'), [tag('c', 'い三', 3)])).toBeNull());
  test('is what is placed', () => {
    const facts = { mark: 'ろ一', stage: 'cut' } as TagFactsInput;
    expect(lastStanding({ is: 'place', tag: 'd', facts }, tags)).toBe(facts);
  });
});

describe('the size of a tapped box', () => {
  test('is that of the box placed last', () => expect(lastSize(tags)?.[0]).toBeCloseTo(0.4));
  test("is nobody's where only outlines stand, or nothing", () => {
    const outline = tag('o', 'い一', 1, { region: { shape: 'polygon', points: [] } });
    expect([lastSize([outline]), lastSize([])]).toEqual([null, null]);
  });
});
