import { expect, test } from 'vitest';
import { createLeaving } from '../../../client/parts/leaving.ts';

test('leaving is asked about only while a form holds something unsaved', () => {
  const leaving = createLeaving();
  const form = leaving.enter();
  const asked: (() => void)[] = [];
  const stop = form.askBy((go) => asked.push(go));
  let left = 0;
  const go = () => (left += 1);

  leaving.leaveThen(go);
  form.leaveThen(go);
  expect([left, asked.length]).toEqual([2, 0]);

  form.tell(true);
  leaving.leaveThen(go);
  form.leaveThen(go);
  expect([left, asked.length]).toEqual([2, 2]);
  asked[0]?.();
  expect(left).toBe(3);

  form.tell(false);
  leaving.leaveThen(go);
  expect(left).toBe(4);

  // A form that is gone cannot ask and must not hold anybody back.
  form.tell(true);
  stop();
  leaving.leaveThen(go);
  expect(left).toBe(5);
});
