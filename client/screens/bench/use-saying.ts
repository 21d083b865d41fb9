import { useState } from 'react';
import type { ShownStretch } from '#domain/contract/frame-shapes';
import type { PhotoDetailView } from '#domain/contract/views';
import { newId } from '../../api/new-id.ts';
import { TAKEN_BACK } from '../../i18n/taken-back.ts';
import { browserStorage } from '../../outbox/browser-storage.ts';
import type { TagFactsInput, TagWrite } from '../../outbox/outbox.ts';
import type { OutboxInUse } from '../../outbox/use-outbox.ts';
import type { Draft } from './bench-model.ts';
import type { BenchTag } from './bench-tags.ts';
import { NO_DEEDS, sayAgain, takeBack, withDeed, type Deed, type Deeds } from './deeds.ts';
import type { Entry } from './desk-state.ts';
import type { DeskStore } from './desk-store.ts';
import { fateOf, type Fate } from './fate.ts';
import { keepLastSaid, lastStanding, type LastSaid } from './last-said.ts';

/** The last thing that was said at this photo since it was opened. */
export interface SaidHere extends LastSaid {
  readonly tag: string;
  readonly is: TagWrite['is'];
  readonly fate: Fate;
}

export interface Saying {
  /** Says what the drawing shows; the drawing is then done. */
  readonly place: (draft: Draft, said: LastSaid & Pick<Entry, 'note' | 'stretch'>) => void;
  readonly withdraw: (tag: BenchTag, reason: string) => void;
  /** The drawing's last step, or where nothing was drawn since, the last statement. */
  readonly goBack: (which: 'undo' | 'redo') => void;
  readonly canGoBack: Readonly<Record<'undo' | 'redo', boolean>>;
  readonly said: SaidHere | null;
}

export interface SayingParts {
  readonly photo: PhotoDetailView;
  readonly store: DeskStore;
  readonly outboxInUse: OutboxInUse;
  readonly freshAfter: (said: LastSaid) => Entry;
  /** Which part of a member is likely shown, where nobody says it. */
  readonly guessFor: (mark: string) => ShownStretch | null;
}

/** Statements about one photo: made, taken back, made again, and what became of the last one. */
export function useSaying({ photo, store, outboxInUse, freshAfter, guessFor }: SayingParts): Saying {
  const { outbox, entries, speaker, flush, pause } = outboxInUse;
  const [last, setLast] = useState<Omit<SaidHere, 'fate'> | null>(null);
  const [deeds, setDeeds] = useState<Deeds>(NO_DEEDS);

  const say = (write: TagWrite) => {
    outbox.add({ photo: photo.id, by: speaker.id, write });
    flush();
    setLast({ tag: write.tag, mark: write.facts.mark, stage: write.facts.stage, is: write.is });
  };
  /** What is proposed follows from what stands: a row goes on where it was taken back to. */
  const keepAsLast = (write: TagWrite) => {
    const last = lastStanding(write, store.tags());
    if (last) keepLastSaid(browserStorage('sessionStorage'), photo.house, last);
  };
  const place: Saying['place'] = ({ region, replaces }, said) => {
    const { mark, stage, note } = said;
    const stretch = said.stretch === 'all' ? null : (said.stretch ?? guessFor(mark));
    const facts = { mark, stage, note, stretch, region: structuredClone(region) } as TagFactsInput;
    const tag = newId();
    const before = replaces === null ? undefined : store.tag(replaces);
    say(replaces === null ? { is: 'place', tag, facts } : { is: 'supersede', tag, old: replaces, facts });
    const deed: Deed | null =
      replaces === null
        ? { is: 'place', tag, facts }
        : before
          ? { is: 'supersede', tag, old: replaces, facts, before: factsOf(before) }
          : null;
    if (deed) setDeeds((now) => withDeed(now, deed));
    keepAsLast({ is: 'place', tag, facts });
    store.tell({ type: 'begin-with', fresh: freshAfter({ mark, stage }) });
    store.tell({ type: 'placed' });
    store.tell({ type: 'select', tag });
  };
  const withdraw: Saying['withdraw'] = (tag, reason) => {
    const facts = factsOf(tag);
    say({ is: 'withdraw', tag: tag.id, reason, facts });
    setDeeds((now) => withDeed(now, { is: 'withdraw', tag: tag.id, facts }));
    keepAsLast({ is: 'withdraw', tag: tag.id, reason, facts });
    store.tell({ type: 'select', tag: null });
  };
  const goBack: Saying['goBack'] = (which) => {
    const { bench } = store.get();
    const steps = which === 'undo' ? bench.past : bench.future;
    if (steps.length > 0 || bench.gesture) {
      store.tell({ type: which });
      return;
    }
    const standing = (tag: string) => store.tag(tag)?.state;
    const turned = (which === 'undo' ? takeBack : sayAgain)(deeds, standing, newId, TAKEN_BACK);
    if (!turned) return;
    say(turned.write);
    setDeeds(turned.deeds);
    keepAsLast(turned.write);
    store.tell({ type: 'select', tag: turned.write.is === 'withdraw' ? null : turned.write.tag });
  };
  const { past, future } = store.get().bench;
  const canGoBack = {
    undo: past.length + deeds.past.length > 0,
    redo: future.length + deeds.future.length > 0,
  };
  const said = last && { ...last, fate: fateOf(last, photo.allTags, entries, pause) };
  return { place, withdraw, goBack, canGoBack, said };
}

function factsOf({ mark, stage, region, stretch, note }: BenchTag): TagFactsInput {
  return { mark, stage, region, stretch, note };
}
