import fc from 'fast-check';
import { describe, expect, it, test } from 'vitest';
import type { ShotListView, ShotView } from '#domain/contract/shot-views';
import {
  addedSince,
  allShots,
  askedIn,
  closedSince,
  lyingOver,
  stateFor,
  stateOfShot,
} from '../../../client/screens/shots/taken-since.ts';
import { asked, askedLine, shot, walkOf } from './some-walk.ts';

const rail = shot('rail', [[0, 1820]]);
const part = (from: number, to: number) => ({ from, to });
const now = (...coverings: ShotListView['asked']) => askedIn(walkOf([], { asked: coverings }));
const stateOf = (of: ShotView, ...lines: Parameters<typeof asked>[0]) => stateOfShot(of, now(asked(lines)));

describe('a shot', () => {
  it('is open while any of it is missing and can be photographed', () => {
    expect(stateOf(rail, askedLine('gap'))).toBe('open');
    expect(stateOf(rail, askedLine('gap', { missing: [part(1000, 3640)] }))).toBe('open');
  });
  it('is on record once the record says so of its part, whatever else is missing', () => {
    expect(stateOf(rail, askedLine('on-record'))).toBe('on-record');
    expect(stateOf(rail, askedLine('gap', { missing: [part(1820, 3640)] }))).toBe('on-record');
    expect(stateOf(rail, askedLine('lost', { missing: [part(1820, 3640)] }))).toBe('on-record');
  });
  it('is lost where it closed without a record, by its own layer or by an earlier one', () => {
    expect(stateOf(rail, askedLine('lost'))).toBe('lost');
    expect(stateOf(rail, askedLine('lost', { missing: [part(900, 1000)] }))).toBe('lost');
    expect(stateOf(rail, askedLine('hidden-before'))).toBe('lost');
    expect(stateOf(rail, askedLine('on-record', { lostBefore: [part(0, 910)] }))).toBe('lost');
    const both = { missing: [part(910, 1820)], lostBefore: [part(0, 910)] };
    expect(stateOf(rail, askedLine('gap', both))).toBe('open');
  });
  it('is no longer asked for where nothing speaks of it, which is no record', () => {
    expect(stateOf(rail)).toBe('unasked');
    expect(stateOfShot(rail, now())).toBe('unasked');
    expect(stateOfShot(rail, now(asked([askedLine('on-record')], 'floor')))).toBe('unasked');
    expect(stateOf(rail, { ...askedLine('on-record'), mark: 'post' as typeof rail.mark })).toBe('unasked');
    expect(stateOf(rail, askedLine('retired'))).toBe('unasked');
    expect(stateOf(rail, askedLine('on-record', { hidden: part(1820, 3640) }))).toBe('unasked');
    // The zone has shrunk: what is left of it decides.
    expect(stateOf(rail, askedLine('on-record', { hidden: part(910, 3640) }))).toBe('on-record');
  });
  it('without a place in space is one piece', () => {
    const lath = shot('rail', []);
    expect(stateOf(lath, askedLine('gap'))).toBe('open');
    expect(stateOf(lath, askedLine('gap', { missing: [part(0, 100)] }))).toBe('open');
    expect(stateOf(lath, askedLine('lost'))).toBe('lost');
    expect(stateOf(lath, askedLine('on-record'))).toBe('on-record');
  });
  it('for two coverings is on record when it is for both', () => {
    const shared = { ...rail, coverings: ['wall', 'floor'] };
    const state = (wall: 'gap' | 'lost' | 'on-record', floor: 'gap' | 'on-record') =>
      stateOfShot(shared, now(asked([askedLine(wall)]), asked([askedLine(floor)], 'floor')));
    expect(state('on-record', 'gap')).toBe('open');
    expect(state('lost', 'gap')).toBe('open');
    expect(state('lost', 'on-record')).toBe('lost');
    expect(state('on-record', 'on-record')).toBe('on-record');
    expect(stateOfShot(shared, now(asked([askedLine('on-record')])))).toBe('on-record');
    expect(stateFor('floor', shared, now(asked([askedLine('on-record')])))).toBe('unasked');
  });
});

test('protection is told of where it lies over the shot itself, the first that was laid', () => {
  const over = (stretch: ReturnType<typeof part> | null, id = 'sheets') => ({
    ...{ id, name: id, since: '2026-04-30T00:00:00.000Z', mark: rail.mark, stretch },
  });
  const lying = (...all: ShotListView['lying']) => lyingOver(rail, walkOf([], { lying: all }))?.id;
  expect(lying()).toBeUndefined();
  expect(lying(over(part(1820, 3640)))).toBeUndefined();
  expect(lying({ ...over(null), mark: 'post' as typeof rail.mark })).toBeUndefined();
  expect(lying(over(part(1820, 3640)), over(part(0, 910), 'boards'), over(null, 'later'))).toBe('boards');
});

test('what has closed since is named, not what had closed before or opened again', () => {
  const walk = walkOf([rail], { asked: [asked([]), asked([], 'floor', true), asked([], 'roof', true)] });
  const later = walkOf([], {
    asked: [asked([], 'wall', true), asked([], 'floor', true), asked([], 'roof'), asked([], 'new', true)],
  });
  expect(closedSince(walk, later)).toEqual(['wall', 'new']);
  expect(closedSince(walk, walk)).toEqual([]);
});

describe('what the walk lacks', () => {
  const added = (walk: (typeof rail)[], later: (typeof rail)[]) => addedSince(walkOf(walk), walkOf(later));
  it('is nothing where the same or less is missing', () => {
    expect(added([rail], [rail])).toBe(0);
    expect(added([rail], [])).toBe(0);
    expect(added([shot('rail', [[0, 3640]])], [shot('rail', [[0, 910]]), shot('rail', [[1820, 3640]])])).toBe(
      0,
    );
  });
  it('is each shot that shows more', () => {
    expect(added([rail], [shot('rail', [[0, 2000]]), shot('post', [[0, 2800]]), shot('lath', [])])).toBe(3);
  });
});

/** Parts of one rail in whole decimetres; the oracle goes through them one by one. */
const parts = fc
  .subarray([0, 1, 2, 3, 4, 5, 6, 7])
  .map((all) => all.map((n): [number, number] => [n * 100, n * 100 + 100]));

test('all that was missing is on record or still open, part by part', () => {
  fc.assert(
    fc.property(parts, parts, (before, after) => {
      const walk = walkOf(before.map((own) => shot('rail', [own])));
      const missing = after.map(([from, to]) => ({ from, to }));
      const line = after.length > 0 ? askedLine('gap', { missing }) : askedLine('on-record');
      const later = walkOf(
        after.map((own) => shot('rail', [own])),
        { asked: [asked([line])] },
      );
      const open = allShots(walk).filter((one) => stateOfShot(one, askedIn(later)) === 'open');
      expect(open.map(({ stretches: [own] }) => own?.from)).toEqual(
        before.map(([from]) => from).filter((from) => after.some(([still]) => still === from)),
      );
      const news = after.filter(([from]) => !before.some(([known]) => known === from)).length;
      expect(addedSince(walk, later)).toBe(news);
    }),
  );
});
