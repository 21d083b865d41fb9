import type { UploadOutcome } from '#domain/contract/views';
import { ProblemError } from '../api/errors.ts';
import {
  nextToSend,
  reduceUploads,
  type UploadEvent,
  type UploadQueue,
  type UploadState,
} from './upload-queue.ts';

export type SendPhoto = (
  house: string,
  file: File,
  progress: (sent: number) => void,
) => Promise<UploadOutcome>;

export interface Uploads {
  readonly subscribe: (listener: () => void) => () => void;
  readonly queue: () => UploadQueue;
  readonly add: (house: string, files: readonly File[]) => void;
  readonly tell: (event: Exclude<UploadEvent, { type: 'chosen' | 'moved' }>) => void;
}

/** Keeps the files of the queue and sends them, outside of any screen. */
export function createUploads(send: SendPhoto, makeId: () => string): Uploads {
  const files = new Map<string, File>();
  const listeners = new Set<() => void>();
  let queue: UploadQueue = [];

  const happen = (event: UploadEvent) => {
    queue = reduceUploads(queue, event);
    forgetFiles();
    for (const { id, house } of nextToSend(queue)) start(id, house);
    for (const listener of listeners) listener();
  };
  const start = (id: string, house: string) => {
    const file = files.get(id);
    const move = (state: UploadState) => happen({ type: 'moved', id, state });
    if (!file) return;
    queue = reduceUploads(queue, { type: 'moved', id, state: { is: 'sending', sent: 0 } });
    const progress = (sent: number) => move(sent >= file.size ? { is: 'storing' } : { is: 'sending', sent });
    send(house, file, progress).then(
      (outcome) => move(stateOf(outcome)),
      (error: unknown) =>
        move({ is: 'failed', problem: error instanceof ProblemError ? error.problem : null }),
    );
  };
  /** What has arrived need not be held any longer. */
  const forgetFiles = () => {
    const needed = new Set(queue.filter(({ state }) => !('photo' in state)).map(({ id }) => id));
    for (const id of files.keys()) if (!needed.has(id)) files.delete(id);
  };

  return {
    subscribe(listener) {
      listeners.add(listener);
      return () => listeners.delete(listener);
    },
    queue: () => queue,
    add(house, chosen) {
      const items = chosen.map((file) => ({ id: makeId(), house, fileName: file.name, bytes: file.size }));
      items.forEach(({ id }, i) => files.set(id, chosen[i] as File));
      happen({ type: 'chosen', items });
    },
    tell: happen,
  };
}

function stateOf(outcome: UploadOutcome): UploadState {
  return outcome.outcome === 'refused'
    ? { is: 'refused', problem: outcome.problem }
    : { is: outcome.outcome, photo: outcome.photo.id };
}
