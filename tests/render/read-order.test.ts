import { expect, test } from 'vitest';
import { readOrder } from '../../server/demo/render/read-order.ts';
import { SHOTS } from '../../server/demo/render/shots/shots.ts';

const read = (...argv: string[]) => readOrder(argv, SHOTS);

test('a folder is enough', () => {
  expect(read('out')).toEqual({ folder: 'out', width: 240, samples: 8, threads: 1, shots: SHOTS });
});

test('one picture, and every number', () => {
  const order = read(
    'out',
    '--width',
    '1600',
    '--samples',
    '32',
    '--threads',
    '2',
    '--only',
    'inside-joists',
  );
  expect(order).toMatchObject({ width: 1600, samples: 32, threads: 2, shots: [{ name: 'inside-joists' }] });
});

test.each([
  [[], 'Say one folder to write to'],
  [['a', 'b'], 'Say one folder to write to'],
  [['a', '--width', 'wide'], '--width is a whole number from 16 to 4000, not wide.'],
  [['a', '--samples', '0'], '--samples is a whole number from 1 to 1024, not 0.'],
  [['a', '--threads', '1.5'], '--threads is a whole number from 1 to 64, not 1.5.'],
  [['a', '--only', 'nothing'], 'There is no picture nothing; there is stones-set'],
  [['a', '--colour', 'red'], 'An option is unknown or has no value'],
])('%j: %s', (argv, sentence) => {
  expect(read(...argv)).toMatchObject({ problem: expect.stringContaining(sentence) });
});
