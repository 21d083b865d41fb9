import type { BodyInput } from '#domain/contract/routes';
import type { Problem } from '#domain/contract/problems';
import { OfflineError, ProblemError, isSignedOut } from '../api/errors.ts';
import type { KeyValueStorage } from './browser-storage.ts';

export type TagFactsInput = Omit<BodyInput<'placeTag'>, 'id'>;

/** `tag` is made by the client, so that sending again after a lost answer repeats nothing. */
export type TagWrite =
  | { readonly is: 'place'; readonly tag: string; readonly facts: TagFactsInput }
  | { readonly is: 'supersede'; readonly tag: string; readonly old: string; readonly facts: TagFactsInput }
  | { readonly is: 'withdraw'; readonly tag: string; readonly reason: string; readonly facts: TagFactsInput };

export interface Unsent {
  readonly key: string;
  readonly photo: string;
  /** The account that said it: on a shared phone nobody sends in another one's name. */
  readonly by: string;
  /** Order of saying. */
  readonly at: number;
  readonly write: TagWrite;
  /** Set when the server will never accept it as it stands. */
  readonly refused: Problem | null;
}

/** Why the last attempt sent nothing: no network, nobody (or somebody else) signed in, or a server that is ill. */
export type Pause = 'offline' | 'signed-out' | 'server';

export interface OutboxParts {
  readonly house: string;
  /** null where the browser keeps nothing: then it lasts as long as the window. */
  readonly storage: KeyValueStorage | null;
  readonly send: (unsent: Unsent) => Promise<void>;
  readonly now: () => number;
  /** Whether what is sent now would still be sent in the name of this account. */
  readonly isStillHere: (account: string) => boolean;
}

export interface Outbox {
  readonly subscribe: (listener: () => void) => () => void;
  readonly entries: () => readonly Unsent[];
  readonly isKept: () => boolean;
  readonly pause: () => Pause | null;
  readonly add: (said: Pick<Unsent, 'photo' | 'by' | 'write'>) => void;
  /** Sends what this account has said, in order, until nothing is left or the network is gone. */
  readonly flush: (by: string) => Promise<void>;
  readonly drop: (key: string) => void;
  /** Another window has sent or said something. */
  readonly reload: () => void;
}

const PREFIX = 'arakabe.unsent.';

/** The houses in which something that was said waits in this browser, whoever said it. */
export function housesWithUnsent(storage: KeyValueStorage | null): string[] {
  const keys = Array.from({ length: storage?.length ?? 0 }, (_, i) => storage?.key(i) ?? '');
  const houses = keys.filter((key) => key.startsWith(PREFIX)).map((key) => key.split('.')[2] ?? '');
  return [...new Set(houses)].sort();
}

/** What was said but not yet heard by the server. Written down before it is sent, removed once it is accepted. */
export function createOutbox({ house, storage, send, now, isStillHere }: OutboxParts): Outbox {
  const shelf = createShelf(storage, `${PREFIX}${house}.`);
  const listeners = new Set<() => void>();
  let entries = shelf.read();
  let running: Promise<void> | null = null;
  let pause: Pause | null = null;

  const tell = () => {
    for (const listener of listeners) listener();
  };
  const reload = () => {
    entries = shelf.read();
    tell();
  };
  const rest = (why: Pause | null) => {
    pause = why;
    tell();
  };
  const put = (unsent: Unsent) => {
    shelf.put(unsent);
    reload();
  };
  const drop = (key: string) => {
    shelf.remove(key);
    reload();
  };
  const sendAll = async (by: string) => {
    for (let next = firstOf(entries, by); next; next = firstOf(entries, by)) {
      // Another window may have signed in as somebody else, with the cookie that this one sends.
      if (!isStillHere(by)) {
        rest('signed-out');
        return;
      }
      try {
        await send(next);
        pause = null;
        drop(next.key);
      } catch (error) {
        const problem = finalProblem(error);
        if (problem === null) {
          rest(pauseAfter(error));
          return;
        }
        pause = null;
        put({ ...next, refused: problem });
      }
    }
  };

  return {
    subscribe(listener) {
      listeners.add(listener);
      return () => listeners.delete(listener);
    },
    entries: () => entries,
    isKept: shelf.isKept,
    pause: () => pause,
    add(said) {
      const last = entries.at(-1)?.at ?? 0;
      const key = `${said.write.is}.${said.write.tag}`;
      put({ ...said, key, at: Math.max(now(), last + 1), refused: null });
    },
    flush(by) {
      running ??= sendAll(by).finally(() => {
        running = null;
      });
      return running;
    },
    drop,
    reload,
  };
}

const firstOf = (entries: readonly Unsent[], by: string) =>
  entries.find((unsent) => unsent.by === by && unsent.refused === null);

function pauseAfter(error: unknown): Pause {
  if (isSignedOut(error)) return 'signed-out';
  return error instanceof OfflineError ? 'offline' : 'server';
}

/** The problem where asking again would bring the same answer; null where the same request may do later. */
export function finalProblem(error: unknown): Problem | null {
  if (!(error instanceof ProblemError)) return null;
  const { status } = error.problem;
  return status === 401 || status === 408 || status === 429 || status >= 500 ? null : error.problem;
}

/** One key an entry: two windows that write at the same time lose nothing of each other's. */
function createShelf(storage: KeyValueStorage | null, prefix: string) {
  const memory = new Map<string, Unsent>();
  return {
    read(): Unsent[] {
      return [...stored(storage, prefix), ...memory.values()].sort((a, b) => a.at - b.at);
    },
    put(unsent: Unsent) {
      try {
        if (storage === null) throw new TypeError('This browser keeps nothing.');
        storage.setItem(prefix + unsent.key, JSON.stringify(unsent));
        memory.delete(unsent.key);
      } catch {
        memory.set(unsent.key, unsent);
      }
    },
    remove(key: string) {
      memory.delete(key);
      storage?.removeItem(prefix + key);
    },
    isKept: () => memory.size === 0,
  };
}

function stored(storage: KeyValueStorage | null, prefix: string): Unsent[] {
  if (storage === null) return [];
  const keys = Array.from({ length: storage.length }, (_, i) => storage.key(i));
  return keys.flatMap((key) => (key?.startsWith(prefix) ? parseUnsent(storage.getItem(key)) : []));
}

function parseUnsent(text: string | null): Unsent[] {
  try {
    const value = JSON.parse(text ?? 'null') as Partial<Unsent> | null;
    const isWhole =
      typeof value?.key === 'string' && typeof value.at === 'number' && Boolean(value.write?.tag);
    return isWhole ? [value as Unsent] : [];
  } catch {
    return [];
  }
}
