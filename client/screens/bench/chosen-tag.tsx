import { useWords } from '../../i18n/use-words.ts';
import { StageName } from '../../parts/stage-name.tsx';
import type { BenchTag } from './bench-tags.ts';
import { DoubtTag } from './doubt-tag.tsx';
import { TagActsRow, type TagActs } from './tag-acts-row.tsx';

/** The tag that is looked at, with what one may do about it, right below the picture. */
export function ChosenTag({ tag, acts }: { tag: BenchTag; acts?: TagActs }) {
  const { t } = useWords();
  const { mark, stage } = tag;
  return (
    <div className="bench-chosen" role="group" aria-label={t('bench.list.chosen', { mark })}>
      <p className="row">
        <strong>{mark}</strong> <StageName stage={stage} />
      </p>
      {acts ? <TagActsRow tag={tag} acts={acts} /> : null}
      <DoubtTag tag={tag} />
    </div>
  );
}
