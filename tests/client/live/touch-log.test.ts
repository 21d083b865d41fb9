import { expect, test } from 'vitest';
import { createTouchLog } from '../../../client/live/touch-log.ts';

test('names the photos since a place, each once', () => {
  const log = createTouchLog();
  log.note('a');
  const from = log.size();
  for (const photo of ['b', 'c', 'b']) log.note(photo);
  expect(log.photosFrom(from)).toEqual(['b', 'c']);
  expect(log.photosFrom(log.size() - 1)).toEqual(['b']);
});

test('knows no photos where nothing was heard, or where anything may have changed', () => {
  const log = createTouchLog();
  expect(log.photosFrom(0)).toBeNull();
  log.note('a');
  log.note(null);
  log.note('b');
  expect(log.photosFrom(0)).toBeNull();
  expect(log.photosFrom(2)).toEqual(['b']);
  expect(log.photosFrom(3)).toBeNull();
});

test('forgets what lies far back, and then says that anything may have changed', () => {
  const log = createTouchLog();
  for (let i = 0; i < 1000; i++) log.note(`photo ${String(i)}`);
  expect(log.size()).toBe(1000);
  expect(log.photosFrom(0)).toBeNull();
  expect(log.photosFrom(799)).toBeNull();
  expect(log.photosFrom(800)).toHaveLength(200);
  expect(log.photosFrom(998)).toEqual(['photo 998', 'photo 999']);
});
