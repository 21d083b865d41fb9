import type { UploadOutcome } from '#domain/contract/views';
import { ProblemError, isSignedOut } from '../api/errors.ts';
import { createFileShelf } from './file-shelf.ts';
import type { FileStore, KeptFile } from './file-store.ts';
import { troublesOf } from './photo-troubles.ts';
import { NotTheirsError, UnreadableFileError, type ToSend } from './send-photo.ts';
import {
  isOver,
  nextToSend,
  reduceUploads,
  type Chooser,
  type UploadEvent,
  type UploadItem,
  type UploadQueue,
  type UploadState,
} from './upload-queue.ts';

export interface UploadParts {
  readonly store: FileStore;
  readonly send: (toSend: ToSend) => Promise<UploadOutcome>;
  /** Runs `work` while no other window of this browser runs any of the same name. */
  readonly alone: <T>(name: string, work: () => Promise<T>) => Promise<T>;
  /** Whether what is sent now would still be sent in the name of this account. */
  readonly isStillHere: (account: string) => boolean;
  readonly makeId: () => string;
  readonly now: () => number;
}

export interface Uploads {
  readonly subscribe: (listener: () => void) => () => void;
  readonly queue: () => UploadQueue;
  readonly add: (house: string, files: readonly File[], by: Chooser) => void;
  /** Only the files of this account are sent; of nobody's while it is null. */
  readonly speakAs: (account: string | null) => void;
  /** Takes up what an earlier page, or another window, has left in the store, and goes on. */
  readonly goOn: () => Promise<void>;
  readonly tell: (
    event: Extract<UploadEvent, { type: 'again' | 'device-position' | 'leave-out' | 'tidy' }>,
  ) => void;
}

/** Sends the files of the queue, outside of any screen. */
export function createUploads(parts: UploadParts): Uploads {
  const shelf = createFileShelf(parts.store, (id) => happen({ type: 'kept', id }));
  const listeners = new Set<() => void>();
  let queue: UploadQueue = [];
  let account: string | null = null;
  /** The server knows nobody: no file is tried until somebody is signed in again, or at the next `goOn`. */
  let isPaused = false;
  let lastChosen = 0;

  const happen = (event: UploadEvent) => {
    const before = queue;
    queue = reduceUploads(queue, event);
    letGo(before);
    proceed();
  };
  const proceed = () => {
    if (!isPaused) for (const item of nextToSend(queue, account)) start(item);
    for (const listener of listeners) listener();
  };
  const start = (item: UploadItem) => {
    queue = reduceUploads(queue, { type: 'moved', id: item.id, state: { is: 'sending', sent: 0 } });
    // The lock is awaited here, too: should the window that holds it end, this one sends.
    void parts
      .alone(item.id, () => attempt(item))
      .then((state) => happen({ type: 'moved', id: item.id, state }));
  };
  const attempt = async ({ id, house, by }: UploadItem): Promise<UploadState> => {
    const file = shelf.file(id);
    if (!file || (await shelf.isGone(id))) return { is: 'elsewhere' };
    const progress = (sent: number) => {
      const state: UploadState = sent >= file.size ? { is: 'storing' } : { is: 'sending', sent };
      happen({ type: 'moved', id, state });
    };
    const mayGo = () => account === by.id && parts.isStillHere(by.id);
    const state = await sendOne(by.id, { house, file, progress, mayGo });
    // Before the lock is free, so that no other window finds it.
    if (isOver({ state })) await shelf.drop(id);
    return state;
  };
  const sendOne = async (by: string, toSend: ToSend): Promise<UploadState> => {
    try {
      if (!toSend.mayGo()) throw new NotTheirsError('Somebody else is signed in.');
      return stateOf(await parts.send(toSend));
    } catch (error) {
      if (account === by && isNobodyThere(error)) isPaused = true;
      return stateAfter(error);
    }
  };
  /** What left the queue is needed nowhere; what has arrived, or is out of reach, not in memory. */
  const letGo = (before: UploadQueue) => {
    const left = new Map(queue.map((item) => [item.id, item.state]));
    for (const { id } of before) {
      const state = left.get(id);
      if (state === undefined) void shelf.drop(id);
      if (state === undefined || 'photo' in state || state.is === 'elsewhere') shelf.forget(id);
    }
  };
  const takeIn = (chosen: readonly KeptFile[], isKept: boolean) => {
    const items = chosen.map(({ id, house, by, file }) => {
      return { id, house, by, fileName: file.name, bytes: file.size, isKept };
    });
    happen({ type: 'chosen', items });
  };

  return {
    subscribe(listener) {
      listeners.add(listener);
      return () => listeners.delete(listener);
    },
    queue: () => queue,
    add(house, files, by) {
      const chosen = files.map((file) => {
        lastChosen = Math.max(parts.now(), lastChosen + 1);
        return { id: parts.makeId(), house, by, at: lastChosen, file };
      });
      chosen.forEach(shelf.keep);
      takeIn(chosen, false);
    },
    speakAs(next) {
      account = next;
      isPaused = false;
      proceed();
    },
    async goOn() {
      isPaused = false;
      takeIn(await shelf.takeUp(), true);
    },
    tell: happen,
  };
}

function stateOf(outcome: UploadOutcome): UploadState {
  if (outcome.outcome === 'already-here') return { is: 'already-here', photo: outcome.photo.id };
  if (outcome.outcome === 'added') {
    const { id, place } = outcome.photo;
    const position = place.position ? 'file' : place.device ? 'device' : 'none';
    return { is: 'added', photo: id, position, against: troublesOf(outcome.photo) };
  }
  const { problem } = outcome;
  // Cut off on the way, it is whole at home.
  return { is: problem.code === 'photo-interrupted' ? 'failed' : 'refused', problem };
}

function isNobodyThere(error: unknown): boolean {
  return isSignedOut(error) || error instanceof NotTheirsError;
}

function stateAfter(error: unknown): UploadState {
  if (isNobodyThere(error)) return { is: 'waiting' };
  if (error instanceof UnreadableFileError) return { is: 'unreadable' };
  return { is: 'failed', problem: error instanceof ProblemError ? error.problem : null };
}
