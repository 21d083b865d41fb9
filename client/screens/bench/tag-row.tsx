import type { MemberView, PhotoDetailView } from '#domain/contract/views';
import { kindLabel } from '../../i18n/kind-label.ts';
import { useLexicon } from '../../shell/use-lexicon.ts';
import { useWords } from '../../i18n/use-words.ts';
import { StageName } from '../../parts/stage-name.tsx';
import type { BenchTag } from './bench-tags.ts';
import { DoubtSaid } from './doubt-said.tsx';
import { DoubtTag } from './doubt-tag.tsx';
import { RivalsNote } from './rivals-note.tsx';
import { TagActsRow, type TagActs } from './tag-acts-row.tsx';
import { TagRemarks } from './tag-remarks.tsx';
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
