import { Link } from 'react-router';
import type { MemberView, PhotoDetailView } from '#domain/contract/views';
import { formatInstant } from '../../i18n/format.ts';
import { kindLabel } from '../../i18n/kind-label.ts';
import { useLexicon } from '../../shell/use-lexicon.ts';
import { useWords } from '../../i18n/use-words.ts';
import { LegibilityMark } from '../../parts/legibility-mark.tsx';
import { StageName } from '../../parts/stage-name.tsx';
import { useHouse } from '../../shell/use-house.ts';
import type { BenchTag } from './bench-tags.ts';
import { DoubtSaid } from './doubt-said.tsx';
import { DoubtTag } from './doubt-tag.tsx';
import { RivalsNote } from './rivals-note.tsx';
import { TagActsRow, type TagActs } from './tag-acts-row.tsx';
import { UnderProtection } from './under-protection.tsx';

export interface TagRowProps {
  tag: BenchTag;
  member: MemberView | undefined;
  /** Other tags that stand for the same earlier one. */
  rivals: readonly BenchTag[];
  isSelected: boolean;
  onSelect: () => void;
  /** None for whoever may not tag. */
  acts?: TagActs | undefined;
  photo: PhotoDetailView;
}

/** A tag that stands, with what can be done about it. */
export function TagRow(props: TagRowProps) {
  const { tag, member, rivals, isSelected, onSelect, acts, photo } = props;
  const { lang } = useWords();
  const lexicon = useLexicon();
  const { mark } = tag;
  return (
    <li className={isSelected ? 'bench-row bench-row-selected' : 'bench-row'}>
      <button type="button" className="bench-row-choose" aria-pressed={isSelected} onClick={onSelect}>
        <strong>{mark}</strong>
        {member ? <span className="soft">{kindLabel(member.kind, lang, lexicon)}</span> : null}
        <StageName stage={tag.stage} track={member?.track ?? null} />
      </button>
      <TagRemarks tag={tag} />
      <UnderProtection photo={photo} mark={mark} isSaid />
      <RivalsNote rivals={rivals} />
      <DoubtSaid tag={tag} photo={photo} />
      {acts ? <TagActsRow tag={tag} acts={acts} /> : null}
      <DoubtTag tag={tag} />
    </li>
  );
}

function TagRemarks({ tag }: { tag: BenchTag }) {
  const { t, lang } = useWords();
  const { id: house, zone } = useHouse();
  const who = tag.by?.name ?? t('common.nobody');
  return (
    <div className="bench-row-remarks">
      {tag.unsent ? <span className="act-text">{t('bench.unsent.state')}</span> : null}
      {tag.known ? (
        <Link to={`/houses/${house}/members/${encodeURIComponent(tag.mark)}`}>
          {t('bench.list.history', { mark: tag.mark })}
        </Link>
      ) : (
        <span className="act-text">{t('bench.list.unknown')}</span>
      )}
      <span className="soft">{t('bench.list.by', { who, when: formatInstant(tag.at, zone, lang) })}</span>
      <LegibilityMark legibility={tag.legibility} />
      {tag.stretch ? <span>{t('bench.stretch.shown', tag.stretch)}</span> : null}
      {tag.note === '' ? null : <span>{tag.note}</span>}
    </div>
  );
}
