import type { MemberView, PhotoDetailView } from '#domain/contract/views';
import { kindLabel } from '../../i18n/kind-label.ts';
import { useWords } from '../../i18n/use-words.ts';
import { StageName } from '../../parts/stage-name.tsx';
import { useLexicon } from '../../shell/use-lexicon.ts';
import type { BenchTag } from './bench-tags.ts';
import { DoubtSaid } from './doubt-said.tsx';
import { DoubtTag } from './doubt-tag.tsx';
import { TagActsRow, type TagActs } from './tag-acts-row.tsx';
import { TagRemarks } from './tag-remarks.tsx';

interface ChosenTagProps {
  tag: BenchTag;
  member: MemberView | undefined;
  acts?: TagActs;
  photo: PhotoDetailView;
}

/** The tag that is looked at, with what one may do about it: its row in the list may be far below. */
export function ChosenTag({ tag, member, acts, photo }: ChosenTagProps) {
  const { t, lang } = useWords();
  const lexicon = useLexicon();
  const { mark, stage } = tag;
  return (
    <div className="bench-chosen" role="group" aria-label={t('bench.list.chosen', { mark })}>
      <p className="bench-chosen-member">
        <strong>{mark}</strong>
        {member ? <span className="soft">{kindLabel(member.kind, lang, lexicon)}</span> : null}
        <StageName stage={stage} track={member?.track ?? null} />
      </p>
      <TagRemarks tag={tag} />
      <DoubtSaid tag={tag} photo={photo} />
      {acts ? <TagActsRow tag={tag} acts={acts} /> : null}
      <DoubtTag tag={tag} />
    </div>
  );
}
