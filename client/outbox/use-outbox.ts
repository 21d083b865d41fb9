import { useCallback, useEffect, useMemo, useSyncExternalStore } from 'react';
import { useQueryClient, type QueryClient } from '@tanstack/react-query';
import type { PhotoDetailView, TagView } from '#domain/contract/views';
import { call } from '../api/call.ts';
import { keys } from '../api/keys.ts';
import { isStillHere } from '../api/noted-account.ts';
import { useSession, useSessionState } from '../api/use-session.ts';
import { withTag } from './with-tag.ts';
import { browserStorage } from './browser-storage.ts';
import { createOutbox, type Outbox, type Pause, type Unsent } from './outbox.ts';

const AGAIN_MS = 10_000;
/** One for each house, as long as the window lives: leaving the bench does not stop what is being sent. */
const outboxes = new Map<string, Outbox>();

function outboxOf(house: string, client: QueryClient): Outbox {
  const known = outboxes.get(house);
  if (known) return known;
  const send = async (unsent: Unsent) => {
    const accepted = await sendWrite(unsent);
    client.setQueryData<PhotoDetailView>(keys.photo(house, unsent.photo), (photo) =>
      photo ? { ...photo, allTags: withTag(photo.allTags, accepted) } : photo,
    );
  };
  const storage = browserStorage('localStorage');
  const outbox = createOutbox({ house, storage, send, now: Date.now, isStillHere });
  outboxes.set(house, outbox);
  return outbox;
}

function sendWrite({ photo, write }: Unsent): Promise<TagView> {
  switch (write.is) {
    case 'place':
      return call('placeTag', { params: { photo }, body: { id: write.tag, ...write.facts } });
    case 'supersede':
      return call('supersedeTag', { params: { tag: write.old }, body: { id: write.tag, ...write.facts } });
    case 'withdraw':
      return call('withdrawTag', { params: { tag: write.tag }, query: { reason: write.reason } });
  }
}

export interface OutboxInUse {
  readonly outbox: Outbox;
  readonly entries: readonly Unsent[];
  readonly speaker: { readonly id: string; readonly name: string };
  readonly flush: () => void;
  /** Why it waits; null while nothing is known to be in the way. */
  readonly pause: Pause | null;
}

/**
 * What was said in this house and has not been heard: sent now, when the network is back, and every ten
 * seconds; but not while nobody is signed in. After signing in it goes on by itself.
 */
export function useOutbox(house: string): OutboxInUse {
  const client = useQueryClient();
  const account = useSession().data?.account;
  const outbox = outboxOf(house, client);
  const entries = useSyncExternalStore(outbox.subscribe, outbox.entries);
  const id = account?.id ?? '';
  const hasEnded = useSessionState() === 'ended';
  const paused = useSyncExternalStore(outbox.subscribe, outbox.pause);
  const pause = hasEnded ? 'signed-out' : paused;
  const flush = useCallback(() => {
    if (id !== '' && !hasEnded) void outbox.flush(id);
  }, [outbox, id, hasEnded]);
  useEffect(() => {
    flush();
    window.addEventListener('online', flush);
    window.addEventListener('storage', outbox.reload);
    return () => {
      window.removeEventListener('online', flush);
      window.removeEventListener('storage', outbox.reload);
    };
  }, [flush, outbox]);
  const isWaiting = entries.some((unsent) => unsent.by === id && unsent.refused === null);
  useEffect(() => {
    if (!isWaiting) return undefined;
    const timer = setInterval(flush, AGAIN_MS);
    return () => clearInterval(timer);
  }, [isWaiting, flush]);
  const name = account?.name ?? '';
  const speaker = useMemo(() => ({ id, name }), [id, name]);
  return { outbox, entries, speaker, flush, pause };
}
