import { expect, test } from 'vitest';
import type { Problem } from '#domain/contract/problems';
import { fateOf } from '../../../client/screens/bench/fate.ts';
import type { Unsent } from '../../../client/outbox/outbox.ts';

const facts = { mark: 'い三', stage: 'cut', region: { shape: 'rectangle', x: 0, y: 0, w: 1, h: 1 } } as const;
const unsent = (tag: string, refused: Problem | null = null): Unsent => ({
  key: `place.${tag}`,
  photo: 'p',
  by: 'ann',
  at: 1,
  write: { is: 'place', tag, facts },
  refused,
});
const placing = (tag: string) => ({ tag, is: 'place' }) as const;
const standing = (id: string) => ({ id, state: 'standing' }) as const;
const problem = { code: 'stage-outside-track' } as unknown as Problem;

test('only what the server has is accepted, even while the outbox still holds it', () => {
  expect(fateOf(placing('a'), [standing('a')], [unsent('a')], null)).toBe('accepted');
  expect(fateOf(placing('a'), [standing('b')], [unsent('a')], null)).toBe('on-its-way');
});
test.each(['offline', 'signed-out', 'server'] as const)('what waits says why: %s', (pause) =>
  expect(fateOf(placing('a'), [], [unsent('a')], pause)).toBe(pause),
);
test('a refusal is said whatever the network does', () =>
  expect(fateOf(placing('a'), [], [unsent('a', problem)], 'offline')).toBe('refused'));
test('what was dropped is not said to be anything', () => {
  expect(fateOf(placing('a'), [], [], null)).toBe('gone');
  expect(fateOf(placing('a'), [], [unsent('b')], null)).toBe('gone');
});
test('that a tag waits to be withdrawn does not make it wait to be placed', () => {
  const withdrawal: Unsent = { ...unsent('a'), write: { is: 'withdraw', tag: 'a', reason: '', facts } };
  expect(fateOf(placing('a'), [], [withdrawal], null)).toBe('gone');
});
test('a withdrawal is accepted when the server has it, not while the tag still stands there', () => {
  const withdrawing = { tag: 'a', is: 'withdraw' } as const;
  const withdrawal: Unsent = { ...unsent('a'), write: { ...withdrawing, reason: '', facts } };
  expect(fateOf(withdrawing, [standing('a')], [withdrawal], null)).toBe('on-its-way');
  expect(fateOf(withdrawing, [standing('a')], [unsent('a'), withdrawal], 'offline')).toBe('offline');
  expect(fateOf(withdrawing, [{ id: 'a', state: 'withdrawn' }], [withdrawal], null)).toBe('accepted');
});
