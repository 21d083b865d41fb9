import { expect, test } from 'vitest';
import type { Problem } from '#domain/contract/problems';
import { fateOf } from '../../../client/screens/bench/fate.ts';
import type { Unsent } from '../../../client/screens/bench/outbox.ts';

const facts = { mark: 'い三', stage: 'cut', region: { shape: 'rectangle', x: 0, y: 0, w: 1, h: 1 } } as const;
const unsent = (tag: string, refused: Problem | null = null): Unsent => ({
  key: `place.${tag}`,
  photo: 'p',
  by: 'ann',
  at: 1,
  write: { is: 'place', tag, facts },
  refused,
});
const problem = { code: 'stage-outside-track' } as unknown as Problem;

test('only what the server has is accepted, even while the outbox still holds it', () => {
  expect(fateOf('a', [{ id: 'a' }], [unsent('a')], null)).toBe('accepted');
  expect(fateOf('a', [{ id: 'b' }], [unsent('a')], null)).toBe('on-its-way');
});
test.each(['offline', 'signed-out', 'server'] as const)('what waits says why: %s', (pause) =>
  expect(fateOf('a', [], [unsent('a')], pause)).toBe(pause),
);
test('a refusal is said whatever the network does', () =>
  expect(fateOf('a', [], [unsent('a', problem)], 'offline')).toBe('refused'));
test('what was dropped is not said to be anything', () => {
  expect(fateOf('a', [], [], null)).toBe('gone');
  expect(fateOf('a', [], [unsent('b')], null)).toBe('gone');
});
test('that a tag waits to be withdrawn does not make it wait to be placed', () => {
  const withdrawal: Unsent = { ...unsent('a'), write: { is: 'withdraw', tag: 'a', reason: '', facts } };
  expect(fateOf('a', [], [withdrawal], null)).toBe('gone');
});
