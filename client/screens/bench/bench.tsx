import { useEffect, useRef, useState } from 'react';
import { useNavigate } from 'react-router';
import type { PhotoDetailView } from '#domain/contract/views';
import type { PhotoFilter } from '../photos/photo-filter.ts';
import { filterAddress } from '../photos/photo-filter.ts';
import type { BenchTag } from './bench-tags.ts';
import { KeysHelp } from './keys-help.tsx';
import type { BenchHands } from './obey.ts';
import { PhotoFacts } from './photo-facts.tsx';
import { PictureStage } from './picture-stage.tsx';
import { TagForm } from './tag-form.tsx';
import { TagList } from './tag-list.tsx';
import { goToWords } from './to-words.ts';
import { ToolBar } from './tool-bar.tsx';
import { UnsentNotice } from '../../outbox/unsent-notice.tsx';
import { focusPicture, useBenchKeys, usePictureFocus } from './use-bench-keys.ts';
import { useDesk } from './use-desk.ts';
import { useMembers } from '../../finding/use-members.ts';
import { useNeighbours } from './use-neighbours.ts';
import type { Viewer } from './viewer.ts';
import { WithdrawDialog } from './withdraw-dialog.tsx';

export interface BenchProps {
  photo: PhotoDetailView;
  filter: PhotoFilter;
  /** A tag to begin with, from the address. */
  wanted: string | null;
}

export function Bench({ photo, filter, wanted }: BenchProps) {
  const { index } = useMembers(photo.house);
  const { store, desk, tags, outboxInUse, said, place, putRight, withdraw } = useDesk(photo, index, wanted);
  const around = useNeighbours(photo.house, photo.id, filter);
  const navigate = useNavigate();
  const [withdrawing, setWithdrawing] = useState<BenchTag | null>(null);
  const root = useRef<HTMLDivElement>(null);
  const viewer = useRef<Viewer | null>(null);
  const tallness = photo.height / photo.width;

  /** After the next drawing of the screen, when what is looked for is there. */
  const focusOn = (selector: string) =>
    requestAnimationFrame(() => {
      root.current?.querySelector<HTMLElement | SVGElement>(selector)?.focus({ preventScroll: true });
    });
  const toWords = () => goToWords(root.current);
  // What had the focus may be gone with the drawing; the keys must still find the bench.
  const hasDraft = desk.bench.work.draft !== null;
  const hadDraft = useRef(hasDraft);
  useEffect(() => {
    if (hadDraft.current && !hasDraft && document.activeElement === document.body) focusPicture();
    hadDraft.current = hasDraft;
  }, [hasDraft]);
  const hands: BenchHands = {
    store,
    viewer: () => viewer.current,
    tallness,
    focusOn,
    toWords,
    onWithdraw: setWithdrawing,
    turn(to) {
      const id = around?.[to];
      if (id) void navigate(`/houses/${photo.house}/photos/${id}${filterAddress(filter)}`);
    },
  };
  useBenchKeys(hands);
  usePictureFocus();

  return (
    <div ref={root} className="bench">
      <div className="bench-left">
        <ToolBar
          desk={desk}
          tell={store.tell}
          tallness={tallness}
          viewer={viewer}
          focusOn={focusOn}
          toWords={toWords}
        />
        <PictureStage
          photo={photo}
          tallness={tallness}
          store={store}
          bench={desk.bench}
          tags={tags}
          viewer={viewer}
          onDrawn={toWords}
        />
      </div>
      <div className="bench-right">
        <UnsentNotice
          house={photo.house}
          photo={photo.id}
          inUse={outboxInUse}
          onPutRight={(refused) => {
            putRight(refused);
            toWords();
          }}
        />
        <TagForm
          desk={desk}
          tags={tags}
          index={index}
          tell={store.tell}
          said={said}
          onPlace={(draft, said) => {
            place(draft, said);
            focusOn('.bench-stage');
          }}
        />
        <TagList
          tags={tags}
          index={index}
          selected={desk.bench.selected}
          tell={store.tell}
          onWithdraw={setWithdrawing}
          toWords={toWords}
        />
        <PhotoFacts photo={photo} />
        <KeysHelp />
      </div>
      <WithdrawDialog
        tag={withdrawing}
        onClose={() => setWithdrawing(null)}
        onWithdraw={(tag, reason) => {
          withdraw(tag, reason);
          setWithdrawing(null);
          focusOn('.bench-stage');
        }}
      />
    </div>
  );
}
