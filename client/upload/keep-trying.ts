import type { Uploads } from './upload-driver.ts';
import { isMoving, isUnheard } from './upload-queue.ts';

export interface KeepTrying {
  /** Everything that no server has heard of, now: the network says that it is back. */
  readonly allNow: () => void;
}

/**
 * Sends again what no server has heard of: one file every `everyMs`, and all the others as soon as that
 * one has got an answer. A server that was started again makes no event in a browser.
 */
export function keepTrying(uploads: Uploads, everyMs: number): KeepTrying {
  let timer: ReturnType<typeof setTimeout> | undefined;
  let probe: string | null = null;
  const unheard = () => uploads.queue().filter(isUnheard);
  const again = (ids: readonly string[]) => uploads.tell({ type: 'again', ids });
  const allNow = () => {
    probe = null;
    again(unheard().map(({ id }) => id));
  };
  const tryOne = () => {
    timer = undefined;
    const waiting = unheard();
    // Each in its turn: a file at which the server always fails must not keep the others waiting.
    const next = waiting[(waiting.findIndex(({ id }) => id === probe) + 1) % waiting.length];
    if (!next) return;
    probe = next.id;
    again([next.id]);
  };
  uploads.subscribe(() => {
    if (unheard().length === 0) return;
    const tried = uploads.queue().find(({ id }) => id === probe);
    if (tried && !isMoving(tried) && tried.state.is !== 'waiting' && !isUnheard(tried)) allNow();
    else timer ??= setTimeout(tryOne, everyMs);
  });
  return { allNow };
}
