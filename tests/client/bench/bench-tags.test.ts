import { describe, expect, test } from 'vitest';
import type { TagView } from '#domain/contract/views';
import type { Mark } from '#domain/frame/mark';
import { mergeUnsent } from '../../../client/screens/bench/bench-tags.ts';
import { withTag } from '../../../client/outbox/with-tag.ts';
import type { TagWrite, Unsent } from '../../../client/outbox/outbox.ts';

const region = { shape: 'rectangle', x: 0, y: 0, w: 0.1, h: 0.1 } as const;
const facts = { mark: 'い三', stage: 'pegged', region } as const;
const ann = { id: 'ann', name: 'Ann' };
const tag = (id: string, more: Partial<TagView> = {}): TagView => ({
  id,
  photo: 'p1',
  mark: 'い一' as Mark,
  known: true,
  stage: 'raised',
  region,
  stretch: null,
  note: '',
  by: ann,
  at: '2026-04-03T05:20:00.000Z',
  supersedes: null,
  state: 'standing',
  ended: null,
  disputed: null,
  legibility: { verdict: null, reasons: [], acrossPx: null, sharpness: null },
  ...more,
});
const unsent = (write: TagWrite, more: Partial<Unsent> = {}): Unsent => ({
  key: write.tag,
  photo: 'p1',
  by: 'ann',
  at: 0,
  write,
  refused: null,
  ...more,
});
const merge = (tags: TagView[], ...entries: Unsent[]) =>
  mergeUnsent(tags, entries, ann, (mark) => mark === 'い三');

describe('tags with what has not been sent', () => {
  test('a new one stands, marked', () => {
    expect(merge([], unsent({ is: 'place', tag: 'a', facts }))).toMatchObject([
      { id: 'a', mark: 'い三', known: true, stage: 'pegged', state: 'standing', unsent: 'placing', by: ann },
    ]);
  });
  test('an unknown mark says so, in its normal form', () => {
    const [placed] = merge([], unsent({ is: 'place', tag: 'a', facts: { ...facts, mark: ' Ｘ９ ' } }));
    expect(placed).toMatchObject({ mark: 'X9', known: false });
  });
  test('a change ends the old one', () => {
    const merged = merge([tag('a')], unsent({ is: 'supersede', tag: 'b', old: 'a', facts }));
    expect(merged).toMatchObject([
      { id: 'a', state: 'superseded' },
      { id: 'b', state: 'standing', supersedes: 'a' },
    ]);
  });
  test('a withdrawal ends it with its reason', () => {
    expect(
      merge([tag('a')], unsent({ is: 'withdraw', tag: 'a', reason: 'wrong post', facts })),
    ).toMatchObject([
      { id: 'a', state: 'withdrawn', unsent: 'withdrawing', ended: { reason: 'wrong post' } },
    ]);
  });
  test('one that the server already has is not doubled', () => {
    expect(merge([tag('a')], unsent({ is: 'place', tag: 'a', facts }))).toEqual([
      { ...tag('a'), unsent: null },
    ]);
  });
  test('a refused one changes nothing', () => {
    const refused = {
      type: '',
      title: '',
      status: 422,
      detail: '',
      code: 'stage-outside-track',
      params: {},
    } as const;
    expect(
      merge([tag('a')], unsent({ is: 'withdraw', tag: 'a', reason: '', facts }, { refused })),
    ).toMatchObject([{ state: 'standing', unsent: null }]);
  });
});

describe('an accepted tag in the answer that is on screen', () => {
  test('comes in, and ends the one that it supersedes', () => {
    const accepted = tag('b', { supersedes: 'a', at: '2026-04-04T00:00:00.000Z' });
    expect(withTag([tag('a'), tag('c')], accepted)).toMatchObject([
      { id: 'a', state: 'superseded', ended: { at: '2026-04-04T00:00:00.000Z' } },
      { id: 'c', state: 'standing' },
      { id: 'b', state: 'standing' },
    ]);
  });
  test('replaces itself', () => {
    expect(withTag([tag('a')], tag('a', { state: 'withdrawn' }))).toMatchObject([
      { id: 'a', state: 'withdrawn' },
    ]);
  });
});
