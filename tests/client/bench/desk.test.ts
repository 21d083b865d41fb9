import { describe, expect, test } from 'vitest';
import { BUILT_IN } from '#domain/lexicon/lexicon';
import type { MemberView } from '#domain/contract/views';
import type { Mark } from '#domain/frame/mark';
import type { BenchTag } from '../../../client/screens/bench/bench-tags.ts';
import { openDesk } from '../../../client/screens/bench/desk-state.ts';
import { createDeskStore } from '../../../client/screens/bench/desk-store.ts';
import { checkEntry } from '../../../client/screens/bench/entry-check.ts';
import { keepLastSaid, readLastSaid } from '../../../client/screens/bench/last-said.ts';
import { indexMembers } from '../../../client/finding/member-index.ts';
import { neighboursIn } from '../../../client/screens/bench/neighbours.ts';
import { memoryStorage } from '../memory-storage.ts';

const region = { shape: 'rectangle', x: 0.1, y: 0.1, w: 0.2, h: 0.2 } as const;
const tag = {
  id: 'a',
  mark: 'い三',
  stage: 'pegged',
  note: 'east side',
  region,
  state: 'standing',
} as unknown as BenchTag;
const fresh = { mark: 'い四', stage: 'raised', note: '' } as const;
const box = { type: 'box-in-middle', centre: [0.5, 0.5], size: [0.1, 0.1] } as const;

function desk() {
  const store = createDeskStore(openDesk({ begun: null, fresh, selected: null, tool: 'look' }));
  store.knowTags([tag]);
  return store;
}

describe('the words that go with a drawing', () => {
  test('begin with the last stage and the next mark', () => {
    const store = desk();
    store.tell({ type: 'write', entry: { mark: 'left over', stage: null } });
    store.tell(box);
    expect(store.get().entry).toEqual(fresh);
  });
  test('are those of the tag when its region is changed', () => {
    const store = desk();
    store.tell({ type: 'nudge', by: [0.1, 0], tag });
    expect(store.get().entry).toEqual({ mark: 'い三', stage: 'pegged', note: 'east side', stretch: 'all' });
  });
  test('forget the part of one member when another is meant', () => {
    const store = desk();
    store.tell(box);
    store.tell({ type: 'write', entry: { mark: 'ろ一', stretch: { from: '二', to: '三' } } });
    store.tell({ type: 'write', entry: { stage: 'cut' } });
    expect(store.get().entry.stretch).toEqual({ from: '二', to: '三' });
    store.tell({ type: 'write', entry: { mark: 'ろ二' } });
    expect(store.get().entry.stretch).toBeUndefined();
  });
  test('stay while the drawing is pulled about', () => {
    const store = desk();
    store.tell(box);
    store.tell({ type: 'write', entry: { mark: 'ろ一' } });
    store.tell({ type: 'grow', by: [0.1, 0.1], tag: null });
    expect(store.get().entry.mark).toBe('ろ一');
  });
  test('begin anew after placing', () => {
    const store = desk();
    store.tell(box);
    store.tell({ type: 'write', entry: { mark: 'ろ一' } });
    store.tell({ type: 'begin-with', fresh: { ...fresh, mark: 'ろ二' } });
    store.tell({ type: 'placed' });
    store.tell(box);
    expect(store.get().entry.mark).toBe('ろ二');
  });
  test('of another member in the same region do not take over the first one', () => {
    const store = desk();
    store.tell({ type: 'also-here', region });
    expect(store.get()).toMatchObject({
      entry: fresh,
      bench: { work: { draft: { region, replaces: null } } },
    });
  });
  test('come back after a reload', () => {
    const begun = {
      work: { draft: { region, replaces: null }, corners: [], waiting: [] },
      mark: 'は',
      stage: 'cut',
      note: 'n',
    } as const;
    expect(openDesk({ begun, fresh, selected: null, tool: 'tap' })).toMatchObject({
      entry: { mark: 'は', stage: 'cut', note: 'n' },
      bench: { work: begun.work },
    });
  });
  test('that were refused come back with their drawing, and undo finds what lay there', () => {
    const store = desk();
    store.tell(box);
    const drawn = store.get().bench.work;
    const entry = { mark: 'は一', stage: 'cut', note: 'n' } as const;
    store.tell({ type: 'put-right', draft: { region, replaces: 'a' }, entry });
    expect(store.get()).toMatchObject({ entry, bench: { work: { draft: { region, replaces: 'a' } } } });
    store.tell({ type: 'undo' });
    expect(store.get().bench.work).toEqual(drawn);
  });
  test('tell nobody when nothing has changed', () => {
    const store = desk();
    let heard = 0;
    store.subscribe(() => (heard += 1));
    store.tell({ type: 'undo' });
    expect(heard).toBe(0);
    store.tell(box);
    expect(heard).toBe(1);
  });
});

describe('what was said last', () => {
  const storage = memoryStorage();
  test('is kept house by house, marks with spaces too', () => {
    keepLastSaid(storage, 'h1', { mark: '柱 北 二', stage: 'lath-on' });
    expect(readLastSaid(storage, 'h1')).toEqual({ mark: '柱 北 二', stage: 'lath-on' });
    expect(readLastSaid(storage, 'h2')).toBeNull();
    expect(readLastSaid(null, 'h1')).toBeNull();
  });
});

describe('whether it can be said', () => {
  const lath = {
    mark: '小舞北' as Mark,
    kind: '小舞',
    name: '',
    place: '',
    track: 'lath',
    retired: false,
  } as MemberView;
  const index = indexMembers([lath], BUILT_IN);
  test('a known member at a stage that it passes', () => {
    expect(checkEntry({ mark: ' 小舞北 ', stage: 'lath-on', note: ' n ' }, index)).toEqual({
      ok: true,
      said: { mark: '小舞北', stage: 'lath-on', note: 'n' },
    });
  });
  test('not at one that it never passes', () => {
    expect(checkEntry({ mark: '小舞北', stage: 'raised', note: '' }, index)).toMatchObject({
      problem: 'outside',
    });
  });
  test('an unknown mark at any stage', () => {
    expect(checkEntry({ mark: 'Ｘ１', stage: 'raised', note: '' }, index)).toMatchObject({
      ok: true,
      said: { mark: 'X1' },
    });
  });
  test('never without mark or stage', () => {
    expect(checkEntry({ mark: ' ', stage: 'raised', note: '' }, index)).toMatchObject({
      field: 'mark',
      problem: 'empty',
    });
    expect(checkEntry({ mark: 'い一', stage: null, note: '' }, index)).toMatchObject({
      field: 'stage',
      problem: 'missing',
    });
  });
});

describe('the photos around one', () => {
  const order = ['a', 'b', 'c'];
  test.each([
    ['a', { previous: null, next: 'b', at: 1, total: 3 }],
    ['b', { previous: 'a', next: 'c', at: 2, total: 3 }],
    ['c', { previous: 'b', next: null, at: 3, total: 3 }],
    ['x', null],
  ])('%s', (photo, around) => expect(neighboursIn(order, photo)).toEqual(around));
});
