import { afterEach, beforeEach, expect, test, vi } from 'vitest';
import type { UploadOutcome } from '#domain/contract/views';
import { OfflineError } from '../../../client/api/errors.ts';
import { keepTrying } from '../../../client/upload/keep-trying.ts';
import { createUploads } from '../../../client/upload/upload-driver.ts';
import { memoryFileStore, memoryLocks } from './memory-file-store.ts';

beforeEach(() => vi.useFakeTimers());
afterEach(() => vi.useRealTimers());

/** A server that can be ended and started again, and counts who knocks. */
function site(files: number) {
  const server = { isUp: false, knocks: 0, chokesOn: '' };
  let ids = 0;
  const uploads = createUploads({
    store: memoryFileStore(),
    alone: memoryLocks(),
    isStillHere: () => true,
    now: () => 0,
    send: ({ file: { name } }) => {
      server.knocks += 1;
      const photo = {
        id: name,
        capture: { state: 'dated', flags: [] },
        place: { position: {}, site: null },
      };
      return server.isUp && name !== server.chokesOn
        ? Promise.resolve({ outcome: 'added', fileName: name, photo } as unknown as UploadOutcome)
        : Promise.reject(new OfflineError('gone'));
    },
    makeId: () => `id-${(ids += 1)}`,
  });
  uploads.speakAs('mio');
  const trying = keepTrying(uploads, 10_000);
  uploads.add(
    'h',
    Array.from({ length: files }, (_, i) => new File([new Uint8Array(3)], `${i}.jpg`)),
    { id: 'mio', name: 'Mio' },
  );
  const states = () => [...new Set(uploads.queue().map(({ state }) => state.is))];
  return { server, uploads, trying, states };
}

test('one file knocks at a time, and once it is heard all the others follow', async () => {
  const { server, states } = site(30);
  await vi.advanceTimersByTimeAsync(0);
  expect([states(), server.knocks]).toEqual([['failed'], 30]);
  await vi.advanceTimersByTimeAsync(30_000);
  expect([states(), server.knocks]).toEqual([['failed'], 33]);
  server.isUp = true;
  await vi.advanceTimersByTimeAsync(10_000);
  expect([states(), server.knocks]).toEqual([['added'], 63]);
  await vi.advanceTimersByTimeAsync(60_000);
  expect(server.knocks).toBe(63);
});

test('all go at once when the network says that it is back', async () => {
  const { server, trying, states } = site(5);
  await vi.advanceTimersByTimeAsync(0);
  server.isUp = true;
  trying.allNow();
  await vi.advanceTimersByTimeAsync(0);
  expect([states(), server.knocks]).toEqual([['added'], 10]);
});

test('what was left out meanwhile is not waited for', async () => {
  const { server, uploads, states } = site(2);
  await vi.advanceTimersByTimeAsync(10_000);
  uploads.tell({ type: 'leave-out', id: 'id-1' });
  server.isUp = true;
  await vi.advanceTimersByTimeAsync(10_000);
  expect([uploads.queue().length, states()]).toEqual([1, ['added']]);
});

test('a file at which the server always fails keeps no other waiting', async () => {
  const { server, uploads } = site(4);
  await vi.advanceTimersByTimeAsync(0);
  Object.assign(server, { isUp: true, chokesOn: '0.jpg' });
  await vi.advanceTimersByTimeAsync(20_000);
  expect(uploads.queue().map(({ state }) => state.is)).toEqual(['failed', 'added', 'added', 'added']);
});
