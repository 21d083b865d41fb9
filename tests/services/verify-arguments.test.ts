import { expect, it } from 'vitest';
import { readVerifyArguments } from '../../server/verify-arguments.ts';

// The head of a tree without a leaf: SHA-256 of nothing (RFC 6962, 2.1).
const HEAD = 'e3b0c44298fc1c149afbf4c8996fb92427ae41e4649b934ca495991b7852b855';

it('takes an archive alone, or with a tree head', () => {
  expect(readVerifyArguments(['house.zip'])).toEqual({ path: 'house.zip', paper: null });
  expect(readVerifyArguments(['house.zip', '--size', '0', '--head', HEAD.toUpperCase()])).toEqual({
    path: 'house.zip',
    paper: { size: 0, head: HEAD, release: null },
  });
});

const BOTH = /^To compare .* both are needed: --size <entries>.* and --head <hex>\.$/;
it.each([
  [['house.zip', '--head', HEAD], BOTH],
  [['house.zip', '--size', '812'], BOTH],
  [['house.zip', '--release', 'x'], BOTH],
  [['house.zip', '--size', 'many', '--head', HEAD], /^--size must be a number, .*“many”\.$/],
  [['house.zip', '--size', '-1', '--head', HEAD], /^Each of --size, --head and --release needs a value/],
  [['house.zip', '--size=-1', '--head', HEAD], /^--size must be a number, .*“-1”\.$/],
  [['house.zip', '--size', '812', '--head', '727a…'], /^--head must be a tree head, 64 signs .*“727a…”\.$/],
  [['house.zip', '--size', '812', '--head'], /^Each of --size, --head and --release needs a value/],
  [[], /^Say which archive/],
  [['house.zip', 'other.zip'], /^Say which archive/],
  [['house.zip', '--depth', '2'], /^Say which archive/],
])('says what is missing of %o', (args, sentence) => {
  expect(() => readVerifyArguments(args)).toThrow(sentence);
});
