import { useMemo, useRef, useState, useSyncExternalStore } from 'react';
import { useNavigate } from 'react-router';
import { useMembers } from '../../finding/use-members.ts';
import { UnsentNotice } from '../../outbox/unsent-notice.tsx';
import { useOutbox } from '../../outbox/use-outbox.ts';
import { FindingsHere } from '../findings/findings-here.tsx';
import { filterAddress } from '../photos/photo-filter.ts';
import { AlikeStrip } from './alike-strip.tsx';
import type { BenchProps } from './bench.tsx';
import { mergeUnsent } from './bench-tags.ts';
import { ChosenTag } from './chosen-tag.tsx';
import { HandOn } from './hand-on.tsx';
import { KeysHelp } from './keys-help.tsx';
import { createLookingStore } from './looking-store.ts';
import { obeyLooking } from './obey-looking.ts';
import { Onward } from './onward.tsx';
import { PhotoFacts } from './photo-facts.tsx';
import { PictureStage } from './picture-stage.tsx';
import { TagList } from './tag-list.tsx';
import { useAlike } from './use-alike.ts';
import { useBenchKeys } from './use-bench-keys.ts';
import { useNeighbours } from './use-neighbours.ts';
import { ViewBar } from './view-bar.tsx';
import type { Viewer } from './viewer.ts';

/** The bench of whoever may not tag: the picture and all that is on record about it. */
export function LookingBench({ photo, filter, wanted }: BenchProps) {
  const { id, house, allTags } = photo;
  const { index } = useMembers(house);
  const neighbours = useNeighbours(house, id, filter);
  const alike = useAlike(house, id);
  const outboxInUse = useOutbox(house);
  const { speaker } = outboxInUse;
  const navigate = useNavigate();
  const viewer = useRef<Viewer | null>(null);
  const [store] = useState(() => createLookingStore(wanted));
  const { bench } = useSyncExternalStore(store.subscribe, store.get);
  const tags = useMemo(
    () => mergeUnsent(allTags, [], speaker, (mark) => index.byMark.has(mark)),
    [allTags, index, speaker],
  );
  store.knowTags(tags);
  const chosen = tags.find((tag) => tag.id === bench.selected && tag.state === 'standing');
  const address = (to: string) => `/houses/${house}/photos/${to}${filterAddress(filter)}`;
  const go = (to: string | null | undefined) => {
    if (to && to !== id) void navigate(address(to));
  };
  const hands = {
    store,
    viewer: () => viewer.current,
    turn: (to: 'previous' | 'next') => go(neighbours?.[to]),
    toSharpest: () => go(alike?.sharpest),
  };
  useBenchKeys((order, target) => obeyLooking(order, hands, target));
  return (
    <div className="bench">
      <div className="bench-left">
        <ViewBar viewer={viewer} />
        <PictureStage
          {...{ photo, store, bench, tags, viewer }}
          tallness={photo.height / photo.width}
          mayDraw={false}
          onDrawn={() => undefined}
          rowNext={null}
        />
      </div>
      <div className="bench-right">
        {/* Of a time when one's role was another. */}
        <UnsentNotice house={house} photo={null} inUse={outboxInUse} />
        {chosen ? <ChosenTag tag={chosen} member={index.byMark.get(chosen.mark)} photo={photo} /> : null}
        {neighbours?.next ? <Onward to={address(neighbours.next)} /> : null}
        <TagList {...{ tags, index, photo }} selected={bench.selected} tell={store.tell} />
        <FindingsHere about={{ photo: id }} />
        <AlikeStrip photo={id} alike={alike} address={address} />
        <PhotoFacts photo={photo} />
        <HandOn photo={id} />
        <KeysHelp isLooking />
      </div>
    </div>
  );
}
