import { describe, expect, test } from 'vitest';
import { PROBLEMS, type ProblemCode } from '#domain/contract/problems';
import type { UploadOutcome } from '#domain/contract/views';
import { OfflineError, ProblemError } from '../../../client/api/errors.ts';
import { readOutcome } from '../../../client/upload/send-photo.ts';
import { createUploads } from '../../../client/upload/upload-driver.ts';
import {
  AT_ONCE,
  canSendAgain,
  isOver,
  isSettled,
  isUnheard,
  lacksPosition,
  summarize,
} from '../../../client/upload/upload-queue.ts';
import { memoryFileStore, memoryLocks } from './memory-file-store.ts';

const problem = (code: ProblemCode) => ({
  type: '',
  title: '',
  status: PROBLEMS[code],
  detail: '',
  code,
  params: {},
});
const refused = (fileName: string, code: ProblemCode): UploadOutcome => ({
  outcome: 'refused',
  fileName,
  problem: problem(code),
});
const taken = (outcome: 'added' | 'already-here', fileName: string) =>
  ({
    outcome,
    fileName,
    photo: {
      id: `photo of ${fileName}`,
      capture: { state: 'dated', flags: [] },
      place: { position: {}, site: null },
    },
  }) as unknown as UploadOutcome;

/** A server that answers when it is told to. */
function bench() {
  const calls: {
    name: string;
    progress: (sent: number) => void;
    answer: (o: UploadOutcome) => void;
    fail: (e: Error) => void;
  }[] = [];
  let ids = 0;
  const uploads = createUploads({
    store: memoryFileStore(),
    alone: memoryLocks(),
    isStillHere: () => true,
    now: () => 0,
    send: ({ file, progress }) =>
      new Promise((answer, fail) => calls.push({ name: file.name, progress, answer, fail })),
    makeId: () => `id-${(ids += 1)}`,
  });
  uploads.speakAs('mio');
  const states = () => uploads.queue().map(({ fileName, state }) => `${fileName} ${state.is}`);
  const settle = async (act: () => void) => {
    act();
    await new Promise((done) => setTimeout(done, 0));
  };
  const add = (house: string, files: File[]) => settle(() => uploads.add(house, files, MIO));
  return { uploads, add, calls, states, settle };
}
const MIO = { id: 'mio', name: 'Mio' };
const file = (name: string, size = 10) => new File([new Uint8Array(size)], name);
const names = (n: number) => Array.from({ length: n }, (_, i) => file(`${i + 1}.jpg`));

describe('the uploads', () => {
  test('go two at a time, in order, and the next starts when one is over', async () => {
    const { add, calls, states, settle } = bench();
    await add('h', names(4));
    expect(calls.map(({ name }) => name)).toEqual(['1.jpg', '2.jpg']);
    await settle(() => calls[1]?.answer(taken('added', '2.jpg')));
    expect(states()).toEqual(['1.jpg sending', '2.jpg added', '3.jpg sending', '4.jpg waiting']);
    expect(calls).toHaveLength(AT_ONCE + 1);
  });

  test('a refused file and a lost connection do not stop the rest', async () => {
    const { uploads, add, calls, states, settle } = bench();
    await add('h', names(4));
    await settle(() => calls[0]?.answer(refused('1.jpg', 'photo-damaged')));
    await settle(() => calls[1]?.fail(new OfflineError('gone')));
    await settle(() => calls[2]?.fail(new ProblemError(problem('internal-error'))));
    await settle(() => calls[3]?.answer(taken('already-here', '4.jpg')));
    expect(states()).toEqual(['1.jpg refused', '2.jpg failed', '3.jpg failed', '4.jpg already-here']);
    expect(summarize(uploads.queue())).toMatchObject({
      total: 4,
      // The other two wait for a server that hears them.
      over: 2,
      bytesDone: 20,
      added: 0,
      known: 1,
      refused: 1,
      failed: 2,
      unheard: 2,
    });
  });

  test('what failed can be sent again, with the same file', async () => {
    const { uploads, add, calls, states, settle } = bench();
    await add('h', names(1));
    await settle(() => calls[0]?.fail(new OfflineError('gone')));
    await settle(() => uploads.tell({ type: 'again', ids: uploads.queue().map(({ id }) => id) }));
    expect(calls.map(({ name }) => name)).toEqual(['1.jpg', '1.jpg']);
    await settle(() => calls[1]?.answer(taken('added', '1.jpg')));
    expect(states()).toEqual(['1.jpg added']);
  });

  test('sending again what the server has refused for good does nothing', async () => {
    const { uploads, add, calls, settle } = bench();
    await add('h', names(2));
    await settle(() => calls[0]?.answer(refused('1.jpg', 'photo-not-an-image')));
    await settle(() => calls[1]?.answer(refused('2.jpg', 'photo-interrupted')));
    expect(uploads.queue().map(canSendAgain)).toEqual([false, true]);
    expect(uploads.queue().map(isUnheard)).toEqual([false, true]);
    await settle(() => uploads.tell({ type: 'again', ids: uploads.queue().map(({ id }) => id) }));
    expect(calls.map(({ name }) => name)).toEqual(['1.jpg', '2.jpg', '2.jpg']);
  });

  test('progress never passes the size, and all bytes sent is not yet stored', async () => {
    const { uploads, add, calls, states } = bench();
    await add('h', [file('a.jpg', 100), file('b.jpg', 300)]);
    calls[0]?.progress(50);
    calls[1]?.progress(30);
    expect(summarize(uploads.queue())).toMatchObject({ bytes: 400, bytesDone: 80 });
    calls[0]?.progress(180);
    expect(states()[0]).toBe('a.jpg storing');
    expect(summarize(uploads.queue()).bytesDone).toBe(130);
    expect(uploads.queue().some(isOver)).toBe(false);
  });

  test('a file that waits can be left out, one on its way cannot', async () => {
    const { uploads, add, states } = bench();
    await add('h', names(3));
    uploads.tell({ type: 'leave-out', id: 'id-3' });
    uploads.tell({ type: 'leave-out', id: 'id-1' });
    expect(states()).toEqual(['1.jpg sending', '2.jpg sending']);
  });

  test('clearing the list leaves what is not over, and other houses', async () => {
    const { uploads, add, calls, states, settle } = bench();
    await add('h', [file('a.jpg')]);
    await add('other', [file('b.jpg')]);
    await add('h', [file('c.jpg')]);
    await settle(() => calls[0]?.answer(taken('added', 'a.jpg')));
    await settle(() => calls[1]?.answer(taken('added', 'b.jpg')));
    uploads.tell({ type: 'tidy', house: 'h' });
    expect(states()).toEqual(['b.jpg added', 'c.jpg sending']);
  });
});

describe('the answer to one file', () => {
  test('is its outcome', () =>
    expect(readOutcome(201, JSON.stringify({ results: [taken('added', 'a.jpg')] })).outcome).toBe('added'));
  test('a problem document is thrown as it is (RFC 9457)', () =>
    expect(() => readOutcome(413, JSON.stringify(problem('file-too-large')))).toThrow(
      expect.objectContaining({ problem: expect.objectContaining({ code: 'file-too-large' }) }),
    ));
  test.each([
    [502, '<html>bad gateway</html>', 'internal-error'],
    [413, '<html>too large</html>', 'request-too-large'],
    [201, '{"results":[]}', 'internal-error'],
    [201, 'null', 'internal-error'],
  ])('%i %s from something in between becomes %s', (status, text, code) =>
    expect(() => readOutcome(status, text)).toThrow(
      expect.objectContaining({ problem: expect.objectContaining({ code }) }),
    ),
  );
});

test('what arrived needs nobody any more; what was refused or waits does', () => {
  for (const position of ['file', 'none', 'device'] as const) {
    const state = { is: 'added', photo: 'p', position, against: [] } as const;
    expect([isSettled({ state }), lacksPosition({ state })]).toEqual([true, position !== 'file']);
  }
  expect(isSettled({ state: { is: 'already-here', photo: 'p' } })).toBe(true);
  expect(isSettled({ state: { is: 'elsewhere' } })).toBe(true);
  for (const is of ['waiting', 'storing', 'unreadable'] as const)
    expect(isSettled({ state: { is } })).toBe(false);
  expect(isSettled({ state: { is: 'failed', problem: null } })).toBe(false);
});
