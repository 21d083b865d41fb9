import { useEffect, useRef, useState } from 'react';
import { useNavigate } from 'react-router';
import type { PhotoDetailView } from '#domain/contract/views';
import type { PhotoFilter } from '../photos/photo-filter.ts';
import { filterAddress } from '../photos/photo-filter.ts';
import { AlikeStrip } from './alike-strip.tsx';
import type { BenchTag } from './bench-tags.ts';
import type { TagActs } from './tag-acts-row.tsx';
import { InARow } from './in-a-row.tsx';
import { nextInRow } from './next-in-row.ts';
import { KeysHelp } from './keys-help.tsx';
import { obey, type BenchHands } from './obey.ts';
import { Onward } from './onward.tsx';
import { HandOn } from './hand-on.tsx';
import { PhotoFacts } from './photo-facts.tsx';
import { PictureStage } from './picture-stage.tsx';
import { TagForm } from './tag-form.tsx';
import { TagList } from './tag-list.tsx';
import { goToWords } from './to-words.ts';
import { ToolBar } from './tool-bar.tsx';
import { UnsentNotice } from '../../outbox/unsent-notice.tsx';
import { sayAsLast } from './last-said.ts';
import { FindingsHere } from '../findings/findings-here.tsx';
import { useAlike } from './use-alike.ts';
import { useAround } from './use-around.ts';
import { focusPicture, useBenchKeys } from './use-bench-keys.ts';
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

/** The bench of whoever may tag. */
export function Bench({ photo, filter, wanted }: BenchProps) {
  const { index } = useMembers(photo.house);
  const neighbours = useNeighbours(photo.house, photo.id, filter);
  const around = useAround(photo.house, neighbours);
  const inUse = useDesk({ photo, index, around, wanted });
  const { store, desk, tags, outboxInUse, said, suggestions, place, putRight, withdraw, goBack } = inUse;
  const alike = useAlike(photo.house, photo.id);
  const navigate = useNavigate();
  const address = (id: string) => `/houses/${photo.house}/photos/${id}${filterAddress(filter)}`;
  const [withdrawing, setWithdrawing] = useState<BenchTag | null>(null);
  const root = useRef<HTMLDivElement>(null);
  const viewer = useRef<Viewer | null>(null);
  const tallness = photo.height / photo.width;

  const waiting = useRef(0);
  /** After the next drawing of the screen, when what is looked for is there. */
  const focusOn = (selector: string) => {
    cancelAnimationFrame(waiting.current);
    waiting.current = requestAnimationFrame(() => {
      root.current?.querySelector<HTMLElement | SVGElement>(selector)?.focus({ preventScroll: true });
    });
  };
  const toWords = () => {
    // Or a slow screen would take the hand that went on to the words back to the drawing.
    cancelAnimationFrame(waiting.current);
    goToWords(root.current);
  };
  const [isInARow, setIsInARow] = useState(false);
  const drawn = () => {
    const desk = store.get();
    const next = isInARow ? nextInRow(desk) : null;
    const { draft } = desk.bench.work;
    if (next && draft && !inUse.mustSayPart(next.mark, draft.region)) place(draft, next);
    else toWords();
  };
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
    goBack,
    asLast: () => sayAsLast(store, photo.house),
    turn(to) {
      const id = neighbours?.[to];
      if (id) void navigate(address(id));
    },
    toSharpest() {
      const id = alike?.sharpest;
      if (id && id !== photo.id) void navigate(address(id));
    },
  };
  const acts: TagActs = {
    onChange(tag) {
      store.tell({ type: 'change', tag });
      toWords();
    },
    onAlso({ region }) {
      store.tell({ type: 'also-here', region });
      toWords();
    },
    onWithdraw: setWithdrawing,
  };
  const next = neighbours?.next ? address(neighbours.next) : null;
  useBenchKeys((order, target) => obey(order, hands, target));

  return (
    <div ref={root} className="bench">
      <div className="bench-left">
        <ToolBar
          desk={desk}
          tell={store.tell}
          goBack={goBack}
          canGoBack={inUse.canGoBack}
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
          onDrawn={drawn}
          mayDraw
          rowNext={isInARow && desk.fresh.stage !== null ? desk.fresh : null}
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
          photo={photo}
          desk={desk}
          tags={tags}
          index={index}
          tell={store.tell}
          said={said}
          suggestions={suggestions}
          space={inUse.space}
          guessFor={inUse.guessFor}
          mustSayPart={inUse.mustSayPart}
          acts={acts}
          onward={next ? <Onward to={next} /> : null}
          row={<InARow fresh={desk.fresh} isOn={isInARow} onChange={setIsInARow} />}
          onAsLast={hands.asLast}
          onPlace={(draft, said) => {
            place(draft, said);
            if (store.get().bench.work.draft) toWords();
            else focusOn('.bench-stage');
          }}
        />
        <TagList {...{ tags, index, acts, photo }} selected={desk.bench.selected} tell={store.tell} />
        <FindingsHere about={{ photo: photo.id }} />
        <AlikeStrip photo={photo.id} alike={alike} address={address} />
        <PhotoFacts photo={photo} />
        <HandOn photo={photo.id} />
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
