import { expect, test } from 'vitest';
import { createLeftovers } from '../../../client/upload/unsent-files.ts';
import type { UploadItem, UploadState } from '../../../client/upload/upload-queue.ts';
import { memoryStorage } from '../memory-storage.ts';

const item = (house: string, fileName: string, state: UploadState): UploadItem => ({
  id: `${house} ${fileName}`,
  house,
  fileName,
  bytes: 1,
  state,
});
const refusal = { type: '', title: '', status: 422, detail: '', code: 'photo-damaged', params: {} } as const;

test('after a reload the names are known that had not been sent, of each house', () => {
  const storage = memoryStorage();
  const before = createLeftovers(() => storage);
  before.follow([
    item('h', 'waiting.jpg', { is: 'waiting' }),
    item('h', 'half.jpg', { is: 'sending', sent: 1 }),
    item('h', 'stored.jpg', { is: 'storing' }),
    item('h', 'unheard.jpg', { is: 'failed', problem: null }),
    item('h', 'there.jpg', { is: 'added', photo: 'p' }),
    item('h', 'known.jpg', { is: 'already-here', photo: 'q' }),
    item('h', 'bad.jpg', { is: 'refused', problem: refusal }),
    item('other', 'a.jpg', { is: 'waiting' }),
  ]);
  expect(before.current()).toEqual({});
  const after = createLeftovers(() => storage);
  expect(after.current()).toEqual({
    h: ['waiting.jpg', 'half.jpg', 'stored.jpg', 'unheard.jpg'],
    other: ['a.jpg'],
  });
});

test('what is chosen again is told no more, the rest also after another reload', () => {
  const storage = memoryStorage();
  createLeftovers(() => storage).follow([
    item('h', '1.jpg', { is: 'waiting' }),
    item('h', '2.jpg', { is: 'waiting' }),
  ]);
  const page = createLeftovers(() => storage);
  let told = 0;
  page.subscribe(() => (told += 1));
  page.follow([item('other', '2.jpg', { is: 'waiting' })]);
  expect([page.current()['h'], told]).toEqual([['1.jpg', '2.jpg'], 0]);
  page.follow([item('h', '1.jpg', { is: 'added', photo: 'p' })]);
  expect([page.current()['h'], told]).toEqual([['2.jpg'], 1]);
  const next = createLeftovers(() => storage);
  expect(next.current()['h']).toEqual(['2.jpg']);
  next.forget('h');
  expect(createLeftovers(() => storage).current()['h']).toBeUndefined();
});

test('a browser that forbids storage, or holds something else there, tells nothing', () => {
  const forbidden = createLeftovers(() => {
    throw new DOMException('denied', 'SecurityError');
  });
  forbidden.follow([item('h', '1.jpg', { is: 'waiting' })]);
  expect(forbidden.current()).toEqual({});
  for (const text of ['null', '[1]', '{"h":"x"}', '{']) {
    const storage = memoryStorage();
    storage.setItem('arakabe.unsent-photos', text);
    expect(createLeftovers(() => storage).current(), text).toEqual({});
  }
});
