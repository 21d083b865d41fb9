import { useEffect, useMemo, useState, useSyncExternalStore } from 'react';
import type { PhotoDetailView } from '#domain/contract/views';
import { newId } from '../../api/new-id.ts';
import { isEmpty, type Draft } from './bench-state.ts';
import { mergeUnsent, type BenchTag } from './bench-tags.ts';
import { browserStorage, type KeyValueStorage } from '../../outbox/browser-storage.ts';
import { openDesk, type Desk } from './desk-state.ts';
import { createDeskStore, type DeskStore } from './desk-store.ts';
import { keepBegun, readBegun } from './draft-storage.ts';
import { fateOf, type Fate } from './fate.ts';
import { freshEntry, keepLastSaid, readLastSaid, type LastSaid } from './last-said.ts';
import type { MemberIndex } from '../../finding/member-index.ts';
import type { TagFactsInput, TagWrite, Unsent } from '../../outbox/outbox.ts';
import { useOutbox, type OutboxInUse } from '../../outbox/use-outbox.ts';

/** The last thing that was said at this photo since it was opened. */
export interface SaidHere extends LastSaid {
  readonly tag: string;
  readonly is: TagWrite['is'];
  readonly fate: Fate;
}

export interface DeskInUse {
  readonly store: DeskStore;
  readonly desk: Desk;
  readonly tags: readonly BenchTag[];
  readonly outboxInUse: OutboxInUse;
  /** Says what the drawing shows; the drawing is then done. */
  readonly place: (draft: Draft, said: LastSaid & { note: string }) => void;
  readonly said: SaidHere | null;
  /** Takes what the server refused back to the desk, as it was drawn and said. */
  readonly putRight: (refused: Unsent) => void;
  readonly withdraw: (tag: BenchTag, reason: string) => void;
}

/** The work at one photo: what is drawn, what is said, what of it has been sent. */
export function useDesk(photo: PhotoDetailView, index: MemberIndex, selected: string | null): DeskInUse {
  const { id, house, allTags } = photo;
  const session = browserStorage('sessionStorage');
  const outboxInUse = useOutbox(house);
  const { outbox, entries, speaker, flush, pause } = outboxInUse;
  const begunAt = `${speaker.id}.${id}`;
  const [last, setLast] = useState<Omit<SaidHere, 'fate'> | null>(null);
  const isKnown = useMemo(() => (mark: string) => index.byMark.get(mark)?.retired === false, [index]);

  const [store] = useState(() => {
    const fresh = freshEntry(readLastSaid(session, house), isKnown);
    return createDeskStore(openDesk(readBegun(session, begunAt), fresh, selected));
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
  useEffect(() => keepWhatIsBegun(store, session, begunAt), [store, session, begunAt]);

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
    setLast({ tag, mark, stage, is: replaces === null ? 'place' : 'supersede' });
  };
  const withdraw: DeskInUse['withdraw'] = ({ id: tag, mark, stage, region, note }, reason) => {
    const facts = { mark, stage, region, note } as TagFactsInput;
    say({ is: 'withdraw', tag, reason, facts });
    store.tell({ type: 'select', tag: null });
    setLast({ tag, mark, stage, is: 'withdraw' });
  };
  const putRight: DeskInUse['putRight'] = (refused) => {
    takeBack(store, refused);
    outbox.drop(refused.key);
  };
  const said = last && { ...last, fate: fateOf(last, allTags, entries, pause) };
  return { store, desk, tags, outboxInUse, said, place, putRight, withdraw };
}

function keepWhatIsBegun(store: DeskStore, session: KeyValueStorage | null, key: string): () => void {
  return store.subscribe(() => {
    const { bench, entry } = store.get();
    keepBegun(session, key, isEmpty(bench.work) ? null : { work: bench.work, ...entry });
  });
}

/** As a change of the old tag, unless that was withdrawn meanwhile: then as a new one. */
function takeBack(store: DeskStore, { write }: Unsent): void {
  const { mark, stage, region, note = '' } = write.facts;
  const old = write.is === 'supersede' ? store.tag(write.old) : undefined;
  const replaces = old && old.state !== 'withdrawn' ? old.id : null;
  const draft: Draft = { region, replaces };
  store.tell({ type: 'put-right', draft, entry: { mark, stage, note } });
}
