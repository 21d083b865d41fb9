import { useEffect, useMemo, useState, useSyncExternalStore } from 'react';
import type { PhotoDetailView } from '#domain/contract/views';
import { newId } from '../../api/new-id.ts';
import { isEmpty, type Draft } from './bench-state.ts';
import { mergeUnsent, type BenchTag } from './bench-tags.ts';
import { browserStorage } from './browser-storage.ts';
import { openDesk, type Desk } from './desk-state.ts';
import { createDeskStore, type DeskStore } from './desk-store.ts';
import { keepBegun, readBegun } from './draft-storage.ts';
import { freshEntry, keepLastSaid, readLastSaid, type LastSaid } from './last-said.ts';
import type { MemberIndex } from './member-index.ts';
import type { TagFactsInput } from './outbox.ts';
import { useOutbox, type OutboxInUse } from './use-outbox.ts';

export interface DeskInUse {
  readonly store: DeskStore;
  readonly desk: Desk;
  readonly tags: readonly BenchTag[];
  readonly outboxInUse: OutboxInUse;
  /** Says what the drawing shows; the drawing is then done. */
  readonly place: (draft: Draft, said: LastSaid & { note: string }) => void;
  readonly withdraw: (tag: BenchTag, reason: string) => void;
}

/** The work at one photo: what is drawn, what is said, what of it has been sent. */
export function useDesk(photo: PhotoDetailView, index: MemberIndex, selected: string | null): DeskInUse {
  const { id, house, allTags } = photo;
  const session = browserStorage('sessionStorage');
  const outboxInUse = useOutbox(house);
  const { outbox, entries, speaker, flush } = outboxInUse;
  const isKnown = useMemo(() => (mark: string) => index.byMark.get(mark)?.retired === false, [index]);

  const [store] = useState(() => {
    const fresh = freshEntry(readLastSaid(session, house), isKnown);
    return createDeskStore(openDesk(readBegun(session, id), fresh, selected));
  });
  const desk = useSyncExternalStore(store.subscribe, store.get);
  const tags = useMemo(() => {
    const mine = entries.filter((unsent) => unsent.photo === id && unsent.by === speaker.id);
    return mergeUnsent(allTags, mine, speaker, (mark) => index.byMark.has(mark));
  }, [allTags, entries, id, index, speaker]);
  store.knowTags(tags);

  useEffect(() => {
    store.tell({ type: 'begin-with', fresh: freshEntry(readLastSaid(session, house), isKnown) });
  }, [store, session, house, isKnown]);
  useEffect(
    () =>
      store.subscribe(() => {
        const { bench, entry } = store.get();
        keepBegun(session, id, isEmpty(bench.work) ? null : { work: bench.work, ...entry });
      }),
    [store, session, id],
  );

  const say = (write: Parameters<typeof outbox.add>[0]['write']) => {
    outbox.add({ photo: id, by: speaker.id, write });
    flush();
  };
  const place: DeskInUse['place'] = ({ region, replaces }, { mark, stage, note }) => {
    const facts: TagFactsInput = {
      mark,
      stage,
      note,
      region: structuredClone(region) as TagFactsInput['region'],
    };
    const tag = newId();
    say(replaces === null ? { is: 'place', tag, facts } : { is: 'supersede', tag, old: replaces, facts });
    keepLastSaid(session, house, { mark, stage });
    store.tell({ type: 'begin-with', fresh: freshEntry({ mark, stage }, isKnown) });
    store.tell({ type: 'placed' });
    store.tell({ type: 'select', tag });
  };
  const withdraw: DeskInUse['withdraw'] = ({ id: tag, mark, stage, region, note }, reason) => {
    const facts = { mark, stage, region, note } as TagFactsInput;
    say({ is: 'withdraw', tag, reason, facts });
    store.tell({ type: 'select', tag: null });
  };
  return { store, desk, tags, outboxInUse, place, withdraw };
}
