import { memo, useLayoutEffect, useRef, useState } from 'react';
import { defaultRangeExtractor, useWindowVirtualizer, type Range } from '@tanstack/react-virtual';
import { Link } from 'react-router';
import type { MemberView } from '#domain/contract/views';
import { kindLabel } from '../../i18n/kind-label.ts';
import { useLexicon } from '../../shell/use-lexicon.ts';
import { useWords } from '../../i18n/use-words.ts';
import { StageStrokes } from '../../parts/stage-strokes.tsx';
import { useHouse } from '../../shell/use-house.ts';
import { listAddress, type ListPlace } from './list-address.ts';
import { useRowFocus } from './use-row-focus.ts';

export interface MemberListProps {
  members: readonly MemberView[];
  /** What the list is narrowed to, for the way back. */
  place: Omit<ListPlace, 'at'>;
  /** The mark to begin at. */
  at: string | null;
}

const ROW = 54;
const AHEAD = 12;

/** All that was found; in the page are only the rows near the window and the one that has the focus. */
export function MemberList({ members, place, at }: MemberListProps) {
  const { t } = useWords();
  const list = useRef<HTMLUListElement>(null);
  const [margin, setMargin] = useState(0);
  const [held, setHeld] = useState<number | null>(null);
  const rows = useWindowVirtualizer({
    count: members.length,
    estimateSize: () => ROW,
    overscan: AHEAD,
    scrollMargin: margin,
    getItemKey: (i) => members[i]?.mark ?? i,
    rangeExtractor: (range) => withHeld(range, held),
  });
  useLayoutEffect(() => {
    const measure = () => setMargin(topInPage(list.current));
    measure();
    const watch = new ResizeObserver(measure);
    watch.observe(document.body);
    return () => watch.disconnect();
  }, []);
  const focus = useRowFocus({ list, rows, members, place, at, held, setHeld });
  const address = listAddress(place);
  return (
    <ul
      ref={list}
      role="list"
      className="member-list plain-list"
      aria-label={t('members.list')}
      style={{ height: rows.getTotalSize() }}
      {...focus}
    >
      {rows.getVirtualItems().map(({ key, index, start }) => {
        const member = members[index];
        return member ? (
          <li
            key={key}
            ref={rows.measureElement}
            data-index={index}
            aria-setsize={members.length}
            aria-posinset={index + 1}
            style={{ transform: `translateY(${start - margin}px)` }}
          >
            <MemberRow member={member} address={address} />
          </li>
        ) : null;
      })}
    </ul>
  );
}

function withHeld(range: Range, held: number | null): number[] {
  const drawn = defaultRangeExtractor(range);
  if (held === null || held >= range.count || drawn.includes(held)) return drawn;
  return [...drawn, held].sort((a, b) => a - b);
}

function topInPage(list: HTMLElement | null): number {
  return list ? Math.round(list.getBoundingClientRect().top + window.scrollY) : 0;
}

const MemberRow = memo(function MemberRow({ member, address }: { member: MemberView; address: string }) {
  const { t, lang } = useWords();
  const lexicon = useLexicon();
  const { id: house } = useHouse();
  return (
    <>
      <StageStrokes stage={member.stage} track={member.track} size="large" />
      <Link
        className="member-mark"
        to={`/houses/${house}/members/${encodeURIComponent(member.mark)}${address}`}
      >
        {member.mark}
      </Link>
      <span className="member-kind">{kindLabel(member.kind, lang, lexicon)}</span>
      <span className="member-where soft">
        {[member.name, member.place].filter(Boolean).map((text) => (
          <span key={text}>{text}</span>
        ))}
      </span>
      <span className="member-state">
        {member.retired ? <em>{t('members.retired')}</em> : null}
        <span>{t('common.count.photos', { count: member.photos })}</span>
      </span>
    </>
  );
});
