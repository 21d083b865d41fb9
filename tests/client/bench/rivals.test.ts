import { expect, test } from 'vitest';
import { rivalsOf } from '../../../client/screens/bench/rivals.ts';

type State = 'standing' | 'superseded' | 'withdrawn';
const tag = (id: string, supersedes: string | null, state: State = 'standing') => ({ id, supersedes, state });
const told = (tags: ReturnType<typeof tag>[]) =>
  Object.fromEntries([...rivalsOf(tags)].map(([id, others]) => [id, others.map((other) => other.id)]));

test('two that replaced the same tag are told of each other', () =>
  expect(told([tag('a', null, 'superseded'), tag('b', 'a'), tag('c', 'a'), tag('d', null)])).toEqual({
    b: ['c'],
    c: ['b'],
  }));
test('also after one of them was changed once more', () =>
  expect(
    told([tag('a', null, 'superseded'), tag('b', 'a', 'superseded'), tag('c', 'a'), tag('d', 'b')]),
  ).toEqual({ c: ['d'], d: ['c'] }));
test('and where the earlier tag is not at hand', () =>
  expect(told([tag('b', 'a'), tag('c', 'a'), tag('d', 'a')])).toEqual({
    b: ['c', 'd'],
    c: ['b', 'd'],
    d: ['b', 'c'],
  }));
test('withdrawing one settles it, and one change after the other is no quarrel', () => {
  expect(told([tag('a', null, 'superseded'), tag('b', 'a', 'withdrawn'), tag('c', 'a')])).toEqual({});
  expect(told([tag('a', null, 'superseded'), tag('b', 'a', 'superseded'), tag('c', 'b')])).toEqual({});
});
