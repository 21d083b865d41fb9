import { useEffect, useMemo, useState, useSyncExternalStore } from 'react';
import type { ShownStretch } from '#domain/contract/frame-shapes';
import type { PhotoDetailView } from '#domain/contract/views';
import type { Region } from '#domain/photo/region';
import type { MemberIndex } from '../../finding/member-index.ts';
import { useSpace, type Space } from '../../finding/use-space.ts';
import { browserStorage, type KeyValueStorage } from '../../outbox/browser-storage.ts';
import type { Unsent } from '../../outbox/outbox.ts';
import { useOutbox, type OutboxInUse } from '../../outbox/use-outbox.ts';
import { isEmpty, type Draft } from './bench-model.ts';
import { mergeUnsent, type BenchTag } from './bench-tags.ts';
import { openDesk, type Desk } from './desk-state.ts';
import { createDeskStore, type DeskStore } from './desk-store.ts';
import { keepBegun, readBegun } from './draft-storage.ts';
import { keepTool, readTool } from './kept-tool.ts';
import { readLastSaid } from './last-said.ts';
import { isCutOff } from './cut-off.ts';
import { guessStretch, linesAlong } from './shown-stretch.ts';
import type { Suggestion } from './suggest-marks.ts';
import { useSaying, type Saying } from './use-saying.ts';
import { useSuggestions, type AroundPhoto } from './use-suggestions.ts';

export interface DeskInUse extends Saying {
  readonly store: DeskStore;
  readonly desk: Desk;
  readonly tags: readonly BenchTag[];
  readonly outboxInUse: OutboxInUse;
  readonly suggestions: readonly Suggestion[];
  /** Where members lie; null without a grid. */
  readonly space: Space | null;
  /** Which part of a member this photo likely shows. */
  readonly guessFor: (mark: string) => ShownStretch | null;
  /** Of a long member that the picture cuts off somebody has to say which part it shows. */
  readonly mustSayPart: (mark: string, region: Region) => boolean;
  /** Takes what the server refused back to the desk, as it was drawn and said. */
  readonly putRight: (refused: Unsent) => void;
}

export interface DeskParts {
  readonly photo: PhotoDetailView;
  readonly index: MemberIndex;
  readonly around: AroundPhoto;
  /** The tag to begin with. */
  readonly wanted: string | null;
}

/** The work at one photo: what is drawn, what is said, what of it has been sent. */
export function useDesk({ photo, index, around, wanted }: DeskParts): DeskInUse {
  const { id, house, allTags } = photo;
  const session = browserStorage('sessionStorage');
  const outboxInUse = useOutbox(house);
  const { entries, speaker, outbox } = outboxInUse;
  const begunAt = `${speaker.id}.${id}`;
  const [store] = useState(() => {
    const last = readLastSaid(session, house);
    const fresh = { mark: '', stage: last?.stage ?? null, note: '' };
    const begun = readBegun(session, begunAt);
    return createDeskStore(openDesk({ begun, fresh, selected: wanted, tool: readTool(session) }));
  });
  const desk = useSyncExternalStore(store.subscribe, store.get);
  const tags = useMemo(() => {
    const mine = entries.filter((unsent) => unsent.photo === id && unsent.by === speaker.id);
    return mergeUnsent(allTags, mine, speaker, (mark) => index.byMark.has(mark));
  }, [allTags, entries, id, index, speaker]);
  store.knowTags(tags);
  useEffect(() => keepWhatIsBegun(store, session, begunAt), [store, session, begunAt]);
  const space = useSpace(house, index);
  const guessFor = (mark: string) => {
    const axis = space?.axis(mark);
    if (!space || !axis) return null;
    const standing = store.tags().filter((tag) => tag.state === 'standing' && tag.mark !== mark);
    const others = standing.flatMap((tag) => space.axis(tag.mark) ?? []);
    return guessStretch(axis, others, space.reader);
  };
  const mustSayPart = (mark: string, region: Region) => {
    const axis = space?.axis(mark);
    if (!space || !axis || !isCutOff(region, photo.height / photo.width)) return false;
    return linesAlong(axis, space.reader).length > 0 && guessFor(mark) === null;
  };
  const { suggestions, freshAfter } = useSuggestions({
    ...{ house, index, around, tags, store, space },
    draft: desk.bench.work.draft,
    tallness: photo.height / photo.width,
  });
  const saying = useSaying({ photo, store, outboxInUse, freshAfter, guessFor });
  const putRight = (refused: Unsent) => {
    takeBack(store, refused);
    outbox.drop(refused.key);
  };
  return { ...saying, guessFor, mustSayPart, space, store, desk, tags, outboxInUse, suggestions, putRight };
}

function keepWhatIsBegun(store: DeskStore, session: KeyValueStorage | null, key: string): () => void {
  return store.subscribe(() => {
    const { bench, entry } = store.get();
    keepBegun(session, key, isEmpty(bench.work) ? null : { work: bench.work, ...entry });
    keepTool(session, bench.tool);
  });
}

/** As a change of the old tag, unless that was withdrawn meanwhile: then as a new one. */
function takeBack(store: DeskStore, { write }: Unsent): void {
  const { mark, stage, region, stretch = null, note = '' } = write.facts;
  const old = write.is === 'supersede' ? store.tag(write.old) : undefined;
  const replaces = old && old.state !== 'withdrawn' ? old.id : null;
  const draft: Draft = { region, replaces };
  store.tell({ type: 'put-right', draft, entry: { mark, stage, note, stretch: stretch ?? 'all' } });
}
