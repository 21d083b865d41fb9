import { expect, test } from 'vitest';
import { inKeptOrder } from '../../../client/screens/review/kept-order.ts';

const lines = (...marks: string[]) => marks.map((mark) => ({ mark }));

test('lines stay where they came first, whatever comes first later; new ones come last', () => {
  const places = new Map<string, number>();
  expect(inKeptOrder(lines('い一', 'い二', 'い三'), places)).toEqual(lines('い一', 'い二', 'い三'));
  expect(inKeptOrder(lines('い三', 'い一', 'い二'), places)).toEqual(lines('い一', 'い二', 'い三'));
  expect(inKeptOrder(lines('ろ一', 'い三', 'い一'), places)).toEqual(lines('い一', 'い三', 'ろ一'));
});
