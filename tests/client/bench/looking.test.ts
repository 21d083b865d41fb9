import { describe, expect, test } from 'vitest';
import { keyOrder } from '../../../client/screens/bench/bench-keys.ts';
import { createLookingStore } from '../../../client/screens/bench/looking-store.ts';
import { obeyLooking } from '../../../client/screens/bench/obey-looking.ts';
import type { Viewer } from '../../../client/screens/bench/viewer.ts';

const REGION = { shape: 'rectangle', x: 0.1, y: 0.1, w: 0.2, h: 0.2 } as const;
const TAG = { id: 'a', region: REGION };
const REACH = [0.01, 0.01] as const;
const press = (hit: { on: 'nothing' } | { on: 'tag'; tag: typeof TAG }) =>
  ({ type: 'press', at: [0.15, 0.15], hit, reach: REACH, small: REACH }) as const;

describe('the desk of whoever may not tag', () => {
  test('chooses a tag, and does not take hold of it', () => {
    const store = createLookingStore(null);
    for (let i = 0; i < 2; i++) {
      store.tell(press({ on: 'tag', tag: TAG }));
      store.tell({ type: 'drag', at: [0.5, 0.5], reach: REACH });
      store.tell({ type: 'release', at: [0.5, 0.5] });
    }
    expect(store.get().bench).toMatchObject({ selected: 'a', gesture: null, work: { draft: null } });
    store.tell(press({ on: 'nothing' }));
    expect(store.get().bench.selected).toBeNull();
  });

  test('draws nothing, whatever it is told', () => {
    const store = createLookingStore('a');
    store.tell({ type: 'choose-tool', tool: 'rectangle' });
    store.tell({ type: 'box-in-middle', size: [0.2, 0.2], centre: [0.5, 0.5] });
    store.tell({ type: 'change', tag: TAG });
    store.tell({ type: 'also-here', region: REGION });
    store.tell({ type: 'nudge', by: [0.1, 0], tag: TAG });
    expect(store.get().bench).toMatchObject({ tool: 'look', selected: 'a', work: { draft: null } });
  });

  test('keys move the picture and turn photos; those that draw or withdraw mean nothing', () => {
    const done: string[] = [];
    const viewer = {
      zoom: (by: string) => done.push(by),
      pan: () => done.push('pan'),
    } as unknown as Viewer;
    const hands = {
      store: createLookingStore('a'),
      viewer: () => viewer,
      turn: (to: string) => done.push(to),
      toSharpest: () => done.push('sharpest'),
    };
    const inPicture = { closest: () => ({}) } as unknown as Element;
    const elsewhere = { closest: () => null } as unknown as Element;
    const hit = (key: string, target = inPicture) => {
      const order = keyOrder({ key, code: '', shift: false, command: false, alt: false }, false);
      return order !== null && obeyLooking(order, hands, target);
    };
    for (const key of ['+', '0', 'PageDown', 'g', 'ArrowLeft', 'Escape']) expect(hit(key)).toBe(true);
    expect(done).toEqual(['in', 'all', 'next', 'sharpest', 'pan']);
    expect(hands.store.get().bench.selected).toBeNull();
    // Away from the picture the arrows are the page's.
    expect(hit('ArrowLeft', elsewhere)).toBe(false);
    for (const key of ['b', 'p', 't', 'x', 'r', 'h', 's', '1', 'Delete', 'Backspace', 'Enter'])
      expect([key, hit(key)]).toEqual([key, false]);
  });
});
