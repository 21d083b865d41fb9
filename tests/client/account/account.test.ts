import { expect, test } from 'vitest';
import { cameFrom } from '../../../client/screens/account/came-from.ts';
import { isLongEnough, looksLikeEmail } from '../../../client/screens/account/credentials.ts';

test.each([
  [{ from: '/houses/1/photos?day=2026-04-01' }, '/houses/1/photos?day=2026-04-01'],
  [{ from: 'https://elsewhere.example/' }, '/'],
  [{ from: '//elsewhere.example/' }, '/'],
  [{ from: '/\\elsewhere.example' }, '/'],
  [null, '/'],
  ['/x', '/'],
])('after signing in from %j one comes to %s', (state, expected) => {
  expect(cameFrom(state)).toBe(expected);
});

test('an address needs a name, an @ and a dot', () => {
  expect([' a@b.jp ', 'a@b', 'a b@c.jp', '@c.jp', ''].map(looksLikeEmail)).toEqual([
    true,
    false,
    false,
    false,
    false,
  ]);
});

test('ten characters are enough, nine are not', () => {
  expect(isLongEnough('123456789')).toBe(false);
  expect(isLongEnough('1234567890')).toBe(true);
});
