import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { regionProblem, type Region, type UnitPoint } from '#domain/photo/region';
import type { BenchState, Hit, TagAtHand } from '../../../client/screens/bench/bench-model.ts';
import { START, reduceBench, type BenchEvent } from '../../../client/screens/bench/bench-state.ts';
import { boxInHand } from '../../../client/screens/bench/gestures.ts';

const reach: UnitPoint = [0.01, 0.01];
const small: UnitPoint = [0.06, 0.08];
const NOTHING: Hit = { on: 'nothing' };
const tag: TagAtHand = { id: 'tag-1', region: { shape: 'rectangle', x: 0.2, y: 0.2, w: 0.2, h: 0.2 } };
const onTag: Hit = { on: 'tag', tag };

const press = (x: number, y: number, hit: Hit = NOTHING): BenchEvent => ({
  type: 'press',
  at: [x, y],
  hit,
  reach,
  small,
});
const drag = (x: number, y: number): BenchEvent => ({ type: 'drag', at: [x, y], reach });
const release = (x: number, y: number): BenchEvent => ({ type: 'release', at: [x, y] });
const use = (tool: BenchState['tool']): BenchEvent => ({ type: 'choose-tool', tool });
const play = (...events: BenchEvent[]) => events.reduce(reduceBench, START);

const near = (n: number): number => expect.closeTo(n, 9) as number;
const boxed = (x: number, y: number, w: number, h: number) => ({
  shape: 'rectangle',
  x: near(x),
  y: near(y),
  w: near(w),
  h: near(h),
});

describe('drawing a box', () => {
  test('drag draws it, release keeps it', () => {
    const during = play(use('rectangle'), press(0.1, 0.1), drag(0.4, 0.3));
    expect(boxInHand(during)).toEqual(boxed(0.1, 0.1, 0.3, 0.2));
    const after = reduceBench(during, release(0.5, 0.3));
    expect(after.work.draft).toEqual({ region: boxed(0.1, 0.1, 0.4, 0.2), replaces: null });
    expect(after.gesture).toBeNull();
  });
  test('is cut at the edge of the image', () => {
    const { work } = play(use('rectangle'), press(0.8, 0.8), release(1.7, 1.2));
    expect(work.draft?.region).toEqual(boxed(0.8, 0.8, 0.2, 0.2));
  });
  test('a press without a drag draws nothing', () => {
    expect(play(use('rectangle'), press(0.5, 0.5), release(0.5, 0.5)).work.draft).toBeNull();
  });
  test('a tag under the pointer does not stop it: members lie over each other', () => {
    const { work } = play(use('rectangle'), press(0.25, 0.25, onTag), release(0.3, 0.3));
    expect(work.draft?.replaces).toBeNull();
  });
  test('a tap makes a small box around the place', () => {
    expect(play(use('tap'), press(0.5, 0.5)).work.draft?.region).toEqual(boxed(0.47, 0.46, 0.06, 0.08));
  });
});

describe('drawing an outline', () => {
  const corners = [use('polygon'), press(0.1, 0.1), press(0.4, 0.1), press(0.4, 0.4)];
  test('closes at the first corner', () => {
    const { work } = play(...corners, press(0.105, 0.1));
    expect(work.draft?.region).toEqual({
      shape: 'polygon',
      points: [
        [0.1, 0.1],
        [0.4, 0.1],
        [0.4, 0.4],
      ],
    });
    expect(work.corners).toEqual([]);
  });
  test('closes by a double press, which sets its last corner twice', () => {
    const { work } = play(...corners, press(0.4, 0.4), { type: 'close-outline', reach });
    expect(work.draft?.region.shape === 'polygon' && work.draft.region.points).toHaveLength(3);
  });
  test('two corners do not close', () => {
    const state = play(...corners.slice(0, 3), { type: 'close-outline', reach });
    expect(state.work.draft).toBeNull();
    expect(state.work.corners).toHaveLength(2);
  });
  test('undo takes back one corner, redo sets it again', () => {
    const back = play(...corners, { type: 'undo' });
    expect(back.work.corners).toHaveLength(2);
    expect(reduceBench(back, { type: 'redo' }).work.corners).toHaveLength(3);
  });
  test('what is drawn after an undo leaves nothing to redo', () => {
    const state = play(...corners, { type: 'undo' }, press(0.6, 0.6), { type: 'redo' });
    expect(state.work.corners).toEqual([
      [0.1, 0.1],
      [0.4, 0.1],
      [0.6, 0.6],
    ]);
  });
  test('a second press on the first corner sets no second one there', () => {
    expect(play(...corners.slice(0, 2), press(0.102, 0.1)).work.corners).toHaveLength(1);
  });
  test('undo after closing brings the open outline back', () => {
    const { work } = play(...corners, press(0.1, 0.1), { type: 'undo' });
    expect(work).toMatchObject({ draft: null, corners: { length: 3 } });
  });
});

describe('a tag in the picture', () => {
  test('the first press chooses it and moves nothing', () => {
    const state = play(press(0.3, 0.3, onTag), drag(0.5, 0.5), release(0.5, 0.5));
    expect(state).toMatchObject({ selected: 'tag-1', work: { draft: null } });
  });
  test('a chosen one can be dragged; the change names the tag', () => {
    const state = play(
      press(0.3, 0.3, onTag),
      release(0.3, 0.3),
      press(0.3, 0.3, onTag),
      drag(0.4, 0.5),
      release(0.4, 0.5),
    );
    expect(state.work.draft).toEqual({ region: boxed(0.3, 0.4, 0.2, 0.2), replaces: 'tag-1' });
    expect(reduceBench(state, { type: 'undo' }).work.draft).toBeNull();
  });
  test('a trembling hand moves nothing', () => {
    const state = play(
      press(0.3, 0.3, onTag),
      release(0.3, 0.3),
      press(0.3, 0.3, onTag),
      drag(0.305, 0.3),
      release(0.306, 0.3),
    );
    expect(state.work.draft).toBeNull();
  });
  test('arrow keys move and grow it', () => {
    const state = play({ type: 'nudge', by: [0.01, 0], tag }, { type: 'grow', by: [0, 0.05], tag });
    expect(state.work.draft).toEqual({ region: boxed(0.21, 0.2, 0.2, 0.25), replaces: 'tag-1' });
  });
  test('"also here" draws the same region anew, for another member', () => {
    const state = play({ type: 'select', tag: 'tag-1' }, { type: 'also-here', region: tag.region });
    expect(state).toMatchObject({ selected: null, work: { draft: { region: tag.region, replaces: null } } });
  });
  test('a press beside everything lets it go', () => {
    expect(play({ type: 'select', tag: 'tag-1' }, press(0.9, 0.9)).selected).toBeNull();
  });
});

describe('the drawing', () => {
  const drawn = [use('rectangle'), press(0.1, 0.1), release(0.5, 0.3)];
  test('moves by its inside, pulls by its handles, in every tool', () => {
    const moved = play(...drawn, press(0.2, 0.2, { on: 'draft' }), drag(0.3, 0.3), release(0.3, 0.3));
    expect(moved.work.draft?.region).toEqual(boxed(0.2, 0.2, 0.4, 0.2));
    const pulled = reduceBench(
      reduceBench(moved, press(0.6, 0.4, { on: 'handle', handle: 2 })),
      release(0.6, 0.4),
    );
    expect(pulled.work.draft?.region).toEqual(boxed(0.2, 0.2, 0.4, 0.2));
    const wider = [press(0.6, 0.4, { on: 'handle', handle: 2 }), drag(0.8, 0.5), release(0.8, 0.5)].reduce(
      reduceBench,
      moved,
    );
    expect(wider.work.draft?.region).toEqual(boxed(0.2, 0.2, 0.6, 0.3));
  });
  test('a movement broken off leaves it where it was', () => {
    const state = play(...drawn, press(0.2, 0.2, { on: 'draft' }), drag(0.4, 0.4), { type: 'break-off' });
    expect(state.work.draft?.region).toEqual(boxed(0.1, 0.1, 0.4, 0.2));
    expect(state.gesture).toBeNull();
  });
  test('escape goes back one thing at a time', () => {
    let state = play({ type: 'select', tag: 'tag-1' }, ...drawn);
    state = reduceBench(state, { type: 'escape' });
    expect(state).toMatchObject({ work: { draft: null }, selected: 'tag-1', tool: 'rectangle' });
    state = reduceBench(state, { type: 'escape' });
    expect(state).toMatchObject({ selected: null, tool: 'rectangle' });
    expect(reduceBench(state, { type: 'escape' }).tool).toBe('look');
  });
  test('what was dropped by mistake comes back by undo', () => {
    const state = play(...drawn, { type: 'drop' }, { type: 'undo' });
    expect(state.work.draft?.region).toEqual(boxed(0.1, 0.1, 0.4, 0.2));
  });
  test('once placed it is gone, with its steps, and the tool stays', () => {
    const state = play(...drawn, { type: 'placed' });
    expect(state).toMatchObject({
      work: { draft: null, corners: [] },
      past: [],
      future: [],
      tool: 'rectangle',
    });
  });
  test('a box in the middle by keyboard', () => {
    const state = play({ type: 'box-in-middle', centre: [0.5, 0.5], size: [0.2, 0.1] });
    expect(state.work.draft?.region).toEqual(boxed(0.4, 0.45, 0.2, 0.1));
  });
});

const place = fc.tuple(
  fc.double({ min: -0.5, max: 1.5, noNaN: true }),
  fc.double({ min: -0.5, max: 1.5, noNaN: true }),
);
const hit: fc.Arbitrary<Hit> = fc.oneof(
  fc.constant(NOTHING),
  fc.constant(onTag),
  fc.constant<Hit>({ on: 'draft' }),
  fc.nat(7).map((handle): Hit => ({ on: 'handle', handle })),
);
const anyEvent: fc.Arbitrary<BenchEvent> = fc.oneof(
  fc.constantFrom('look', 'rectangle', 'polygon', 'tap').map((tool) => use(tool)),
  fc.record({
    type: fc.constant('press' as const),
    at: place,
    hit,
    reach: fc.constant(reach),
    small: fc.constant(small),
  }),
  fc.record({ type: fc.constant('drag' as const), at: place, reach: fc.constant(reach) }),
  fc.record({ type: fc.constant('release' as const), at: place }),
  fc.record({
    type: fc.constantFrom('nudge' as const, 'grow' as const),
    by: place,
    tag: fc.constantFrom(tag, null),
  }),
  fc.constantFrom<BenchEvent>(
    { type: 'undo' },
    { type: 'redo' },
    { type: 'escape' },
    { type: 'drop' },
    { type: 'break-off' },
    { type: 'close-outline', reach },
    { type: 'change', tag },
    { type: 'box-in-middle', centre: [0.5, 0.5], size: [0.3, 0.3] },
  ),
);

test('whatever happens, what is drawn can be placed, and undo then redo changes nothing', () => {
  fc.assert(
    fc.property(fc.array(anyEvent, { maxLength: 40 }), (events) => {
      const state = events.reduce(reduceBench, START);
      const { draft, corners } = state.work;
      if (draft) expect(regionProblem(draft.region)).toBeNull();
      for (const [x, y] of corners) expect(x >= 0 && x <= 1 && y >= 0 && y <= 1).toBe(true);
      if (state.gesture || state.past.length === 0) return;
      const again = reduceBench(reduceBench(state, { type: 'undo' }), { type: 'redo' });
      expect(again.work).toEqual(state.work);
    }),
    { numRuns: 500 },
  );
});

test('a region of another tag is not touched by the drawing', () => {
  const region: Region = { ...tag.region };
  play({ type: 'nudge', by: [0.1, 0.1], tag });
  expect(tag.region).toEqual(region);
});
