import { describe, expect, test } from 'vitest';
import type { BenchTag } from '../../../client/screens/bench/bench-tags.ts';
import { openDesk } from '../../../client/screens/bench/desk-state.ts';
import { createDeskStore } from '../../../client/screens/bench/desk-store.ts';
import { keepBegun, readBegun } from '../../../client/screens/bench/draft-storage.ts';
import { leftChange } from '../../../client/screens/bench/left-change.ts';
import { memoryStorage } from '../memory-storage.ts';

const tag = {
  id: 'a',
  mark: 'い三',
  stage: 'pegged',
  note: '',
  stretch: null,
  // In another order than the drawing has it.
  region: { h: 0.2, w: 0.2, y: 0.1, x: 0.1, shape: 'rectangle' },
  state: 'standing',
} as unknown as BenchTag;
const other = { ...tag, id: 'b', mark: 'い二' } as BenchTag;
const fresh = { mark: 'い四', stage: 'raised', note: '' } as const;

type Store = ReturnType<typeof createDeskStore>;

/** The photo is opened, something is done, and it is opened again. */
function openedAgain(work: (store: Store) => void): Store {
  const storage = memoryStorage();
  const open = () => {
    const begun = readBegun(storage, 'photo');
    const store = createDeskStore(openDesk({ begun, fresh, selected: null, tool: 'look' }));
    store.knowTags([tag, other]);
    return store;
  };
  const before = open();
  work(before);
  const { bench, entry } = before.get();
  keepBegun(storage, 'photo', { work: bench.work, ...entry });
  return open();
}

const change = (store: Store) => store.tell({ type: 'change', tag });
const chooseStage = (store: Store) => {
  change(store);
  store.tell({ type: 'write', entry: { stage: 'raised' } });
};

describe('a change that was left without being saved', () => {
  test('is said to be one when the photo is opened again, and keeps what was chosen', () => {
    const store = openedAgain(chooseStage);
    expect(store.get().entry.stage).toBe('raised');
    expect(leftChange(store.get(), tag)).toBe('words');
  });

  test('stays one when "Change" is pressed again', () => {
    const store = openedAgain(chooseStage);
    change(store);
    expect(store.get().entry.stage).toBe('raised');
    expect(leftChange(store.get(), tag)).toBe('words');
  });

  test('is said of a region that was moved, too', () => {
    const store = openedAgain((desk) => desk.tell({ type: 'nudge', by: [0.1, 0], tag }));
    expect(leftChange(store.get(), tag)).toBe('region');
  });

  test('is none where nothing was changed, or no longer is', () => {
    expect(leftChange(openedAgain(change).get(), tag)).toBeNull();
    const store = openedAgain(chooseStage);
    store.tell({ type: 'write', entry: { stage: 'pegged' } });
    expect(leftChange(store.get(), tag)).toBeNull();
  });

  test('is gone once discarded: "Change" then begins with what the tag says', () => {
    const store = openedAgain(chooseStage);
    store.tell({ type: 'drop' });
    change(store);
    expect(store.get().entry).toEqual({ mark: 'い三', stage: 'pegged', note: '', stretch: 'all' });
    store.tell({ type: 'write', entry: { stage: 'raised' } });
    expect(leftChange(store.get(), tag)).toBeNull();
  });

  test('is gone once saved, and for another tag', () => {
    const saved = openedAgain(chooseStage);
    saved.tell({ type: 'placed' });
    expect(saved.get().left).toBeNull();
    const store = openedAgain(chooseStage);
    store.tell({ type: 'change', tag: other });
    expect(store.get()).toMatchObject({ left: null, entry: { mark: 'い二', stage: 'pegged' } });
  });

  test('is nothing that is being changed now, and no new drawing', () => {
    const now = openedAgain(() => undefined);
    chooseStage(now);
    expect(leftChange(now.get(), tag)).toBeNull();
    const drawing = openedAgain((store) =>
      store.tell({ type: 'box-in-middle', centre: [0.5, 0.5], size: [0.1, 0.1] }),
    );
    expect(drawing.get().bench.work.draft).not.toBeNull();
    expect(leftChange(drawing.get(), undefined)).toBeNull();
  });
});
