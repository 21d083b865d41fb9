import { describe, expect, test } from 'vitest';
import type { Problem } from '#domain/contract/problems';
import type { UploadOutcome } from '#domain/contract/views';
import { OfflineError, ProblemError } from '../../../client/api/errors.ts';
import { UnreadableFileError, type ToSend } from '../../../client/upload/send-photo.ts';
import { createUploads, type Uploads } from '../../../client/upload/upload-driver.ts';
import { isAtRisk, type Chooser } from '../../../client/upload/upload-queue.ts';
import { memoryFileStore, memoryLocks, type MemoryFileStore } from './memory-file-store.ts';

const MIO: Chooser = { id: 'mio', name: 'Mio' };
const REN: Chooser = { id: 'ren', name: 'Ren' };
const photos = (n: number) =>
  Array.from({ length: n }, (_, i) => new File([new Uint8Array(10)], `${i + 1}.jpg`));
const settled = () => new Promise((done) => setTimeout(done, 5));
const states = (uploads: Uploads) => uploads.queue().map(({ fileName, state }) => `${fileName} ${state.is}`);
const refusal = (status: number, code: Problem['code']) =>
  new ProblemError({ type: '', title: '', status, detail: '', code, params: {} });

/** One browser with a server behind it; its windows share store, locks and cookie. */
function browser(store: MemoryFileStore = memoryFileStore()) {
  const server = {
    /** Who sent what, in order. */
    took: [] as string[],
    underWay: 0,
    isHolding: false,
    answer: (_: ToSend): Promise<void> => Promise.resolve(),
  };
  const cookie = { account: 'mio' };
  const alone = memoryLocks();
  let ids = 0;
  let time = 0;
  const open = (account: string | null) => {
    let isClosed = false;
    const uploads = createUploads({
      store,
      alone,
      isStillHere: (id) => cookie.account === id,
      makeId: () => `id-${(ids += 1)}`,
      now: () => (time += 1),
      send: async (toSend) => {
        if (server.isHolding || isClosed) await new Promise(() => undefined);
        await server.answer(toSend);
        server.took.push(`${cookie.account} ${toSend.file.name}`);
        return {
          outcome: 'added',
          fileName: '',
          photo: {
            id: toSend.file.name,
            capture: { state: 'dated', flags: [] },
            place: { position: {}, site: null },
          },
        } as unknown as UploadOutcome;
      },
    });
    uploads.speakAs(account);
    return { uploads, close: () => void (isClosed = true) };
  };
  return { server, cookie, store, open };
}

describe('chosen files outlive the page', () => {
  test('what had not arrived goes on by itself, in order of choice, and what had is not sent again', async () => {
    const { server, store, open } = browser();
    const before = open('mio');
    server.answer = ({ file }) =>
      Promise.resolve(file.name === '2.jpg' ? (server.isHolding = true) : undefined).then(() => undefined);
    before.uploads.add('h', photos(6), MIO);
    await settled();
    const arrived = [...server.took];
    expect(arrived.length).toBeGreaterThan(0);
    expect(store.held()).toHaveLength(6 - arrived.length);

    // Another browser's locks: those of a page that was killed are free.
    Object.assign(server, { isHolding: false, answer: () => Promise.resolve() });
    const next = browser(store);
    const after = next.open('mio');
    await after.uploads.goOn();
    await settled();
    const names = [...arrived, ...next.server.took];
    expect(names).toEqual(photos(6).map(({ name }) => `mio ${name}`));
    expect(store.held()).toEqual([]);
  });

  test('a file is let go of when it was refused for good or left out, not while no server is heard', async () => {
    const { server, store, open } = browser();
    const { uploads } = open('mio');
    server.answer = ({ file }) => {
      if (file.name === '1.jpg') throw refusal(404, 'not-found');
      if (file.name === '2.jpg') throw new UnreadableFileError('gone');
      if (file.name === '3.jpg') throw new OfflineError('gone');
      if (file.name === '4.jpg') throw refusal(503, 'internal-error');
      throw refusal(429, 'too-many-attempts');
    };
    uploads.add('h', photos(5), MIO);
    await settled();
    expect(states(uploads)).toEqual([
      '1.jpg failed',
      '2.jpg unreadable',
      '3.jpg failed',
      '4.jpg failed',
      '5.jpg failed',
    ]);
    expect(store.held()).toEqual(['3.jpg', '4.jpg', '5.jpg']);
    uploads.tell({ type: 'leave-out', id: 'id-4' });
    await settled();
    expect(store.held()).toEqual(['3.jpg', '5.jpg']);
    // What was refused for good lies in this window still, and can be sent again from it.
    server.answer = () => Promise.resolve();
    uploads.tell({ type: 'again', ids: ['id-1'] });
    await settled();
    expect(states(uploads)[0]).toBe('1.jpg added');
  });

  test('a full store is said of each file that it does not hold, and used again when room is made', async () => {
    const { server, store, open } = browser(memoryFileStore(2));
    const { uploads } = open(null);
    uploads.add('h', photos(4), MIO);
    await settled();
    expect(uploads.queue().map(isAtRisk)).toEqual([false, false, true, true]);
    server.answer = ({ file }) => (file.name === '1.jpg' ? Promise.resolve() : new Promise(() => undefined));
    uploads.speakAs('mio');
    await settled();
    expect(uploads.queue().map(isAtRisk)).toEqual([false, false, false, true]);
    expect(store.held()).toEqual(['2.jpg', '3.jpg']);
  });

  test('a browser that keeps nothing sends all the same, and says that nothing is kept', async () => {
    const fail = () => Promise.reject(new DOMException('no', 'InvalidStateError'));
    const store = { ...memoryFileStore(), put: fail, ids: fail, get: fail, remove: fail };
    const { server, open } = browser(store);
    const { uploads } = open(null);
    uploads.add('h', photos(3), MIO);
    await uploads.goOn();
    await settled();
    expect(uploads.queue().map(isAtRisk)).toEqual([true, true, true]);
    uploads.speakAs('mio');
    await settled();
    expect(server.took).toHaveLength(3);
    expect(uploads.queue().some(isAtRisk)).toBe(false);
  });

  test('one file that the store cannot take leaves the others kept', async () => {
    const store = memoryFileStore();
    const { put } = store;
    store.put = (kept) =>
      kept.file.name === '1.jpg' ? Promise.reject(new DOMException('', 'NotReadableError')) : put(kept);
    const { uploads } = browser(store).open(null);
    uploads.add('h', photos(3), MIO);
    await settled();
    expect(uploads.queue().map(isAtRisk)).toEqual([true, false, false]);
  });
});

describe('on a shared phone', () => {
  test('nothing goes out in another name: it waits for its person, over a new page, too', async () => {
    const { server, cookie, store, open } = browser();
    const first = open(null);
    first.uploads.add('h', photos(2), MIO);
    await settled();
    cookie.account = 'ren';
    const second = open('ren');
    await second.uploads.goOn();
    second.uploads.add('h', [new File(['x'], 'own.jpg')], REN);
    await settled();
    expect(server.took).toEqual(['ren own.jpg']);
    expect(second.uploads.queue().map(({ by, state }) => [by.name, state.is])).toEqual([
      ['Mio', 'waiting'],
      ['Mio', 'waiting'],
      ['Ren', 'added'],
    ]);
    cookie.account = 'mio';
    second.uploads.speakAs('mio');
    await settled();
    expect(server.took.slice(1)).toEqual(['mio 1.jpg', 'mio 2.jpg']);
    expect(store.held()).toEqual([]);
  });

  test('nor when somebody else signs in, in another window, between two files or before the bytes leave', async () => {
    const { server, cookie, open } = browser();
    const { uploads } = open('mio');
    const mayGo: boolean[] = [];
    server.answer = (toSend) => {
      cookie.account = 'ren';
      mayGo.push(toSend.mayGo());
      return new Promise(() => undefined);
    };
    uploads.add('h', photos(3), MIO);
    await settled();
    expect(mayGo).toEqual([false]);
    expect(states(uploads).slice(1)).toEqual(['2.jpg waiting', '3.jpg waiting']);
  });

  test('a session that ended is no verdict on the file: it goes on after signing in again', async () => {
    const { server, store, open } = browser();
    const { uploads } = open('mio');
    let knocks = 0;
    server.answer = () => {
      knocks += 1;
      throw refusal(401, 'not-signed-in');
    };
    uploads.add('h', photos(5), MIO);
    await settled();
    expect([knocks, new Set(uploads.queue().map(({ state }) => state.is))]).toEqual([
      2,
      new Set(['waiting']),
    ]);
    expect(store.held()).toHaveLength(5);
    server.answer = () => Promise.resolve();
    uploads.speakAs('mio');
    await settled();
    expect(server.took).toHaveLength(5);
  });
});

describe('two windows of one browser', () => {
  test('send each file once between them', async () => {
    const { server, store, open } = browser();
    server.answer = () => new Promise((done) => setTimeout(done, 2));
    const [one, two] = [open('mio'), open('mio')];
    one.uploads.add('h', photos(8), MIO);
    await settled();
    await two.uploads.goOn();
    for (let i = 0; i < 20; i++) await settled();
    expect([...server.took].sort()).toEqual(photos(8).map(({ name }) => `mio ${name}`));
    expect(store.held()).toEqual([]);
    const ends = [one, two].flatMap(({ uploads }) => uploads.queue().map(({ state }) => state.is));
    expect(ends.filter((is) => is === 'added')).toHaveLength(8);
    expect(ends.filter((is) => is !== 'added' && is !== 'elsewhere')).toEqual([]);
  });

  test('what one chose and left behind is found by the other, without a reload', async () => {
    const { server, cookie, open } = browser();
    const [one, two] = [open(null), open('mio')];
    one.uploads.add('h', photos(2), MIO);
    await settled();
    one.close();
    cookie.account = 'mio';
    await two.uploads.goOn();
    await two.uploads.goOn();
    await settled();
    expect(server.took).toEqual(['mio 1.jpg', 'mio 2.jpg']);
  });
});
