import { useMemo, useState } from 'react';
import type { PhotoDetailView } from '#domain/contract/views';
import { compareMarks } from '#domain/frame/mark-order';
import { useWords } from '../../i18n/use-words.ts';
import { Checkbox } from '../../parts/checkbox.tsx';
import { EmptyState } from '../../parts/empty-state.tsx';
import type { BenchTag } from './bench-tags.ts';
import type { TagActs } from './tag-acts-row.tsx';
import type { DeskEvent } from './desk-state.ts';
import { EndedRow } from './ended-row.tsx';
import type { MemberIndex } from '../../finding/member-index.ts';
import { rivalsOf } from './rivals.ts';
import { TagRow } from './tag-row.tsx';

export interface TagListProps {
  tags: readonly BenchTag[];
  index: MemberIndex;
  selected: string | null;
  tell: (event: DeskEvent) => void;
  /** None for whoever may not tag. */
  acts?: TagActs;
  photo: PhotoDetailView;
}

/** All that was said about this photo: what stands, and on demand what no longer does. */
export function TagList({ tags, index, selected, tell, acts, photo }: TagListProps) {
  const { t } = useWords();
  const [showsEnded, setShowsEnded] = useState(false);
  const standing = useMemo(
    () => tags.filter((tag) => tag.state === 'standing').sort((a, b) => compareMarks(a.mark, b.mark)),
    [tags],
  );
  const rivals = useMemo(() => rivalsOf(tags), [tags]);
  const ended = tags.filter((tag) => tag.state !== 'standing');
  return (
    <section className="section">
      <h2>{t('bench.list.title')}</h2>
      {standing.length === 0 ? (
        <EmptyState title={t('bench.list.none')}>{acts ? t('bench.list.noneText') : null}</EmptyState>
      ) : (
        <>
          {acts ? <p className="soft bench-hint">{t('bench.list.alsoMeans')}</p> : null}
          <ul className="plain-list bench-tags">
            {standing.map((tag) => (
              <TagRow
                key={tag.id}
                tag={tag}
                member={index.byMark.get(tag.mark)}
                rivals={rivals.get(tag.id) ?? []}
                isSelected={tag.id === selected}
                onSelect={() => tell({ type: 'select', tag: tag.id })}
                acts={acts}
                photo={photo}
              />
            ))}
          </ul>
        </>
      )}
      {ended.length > 0 ? (
        <Checkbox isSelected={showsEnded} onChange={setShowsEnded}>
          {t('bench.list.ended', { count: ended.length })}
        </Checkbox>
      ) : null}
      {showsEnded ? (
        <ul className="plain-list bench-tags">
          {ended.map((tag) => (
            <EndedRow key={tag.id} tag={tag} />
          ))}
        </ul>
      ) : null}
    </section>
  );
}
