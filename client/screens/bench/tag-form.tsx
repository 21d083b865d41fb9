import type { ReactNode } from 'react';
import { useWords } from '../../i18n/use-words.ts';
import type { BenchTag } from './bench-tags.ts';
import { ChosenTag } from './chosen-tag.tsx';
import type { TagActs } from './tag-acts-row.tsx';
import { LeftNote } from './left-note.tsx';
import { SaidLine } from './said-line.tsx';
import { TagWords, type TagWordsProps } from './tag-words.tsx';
import type { SaidHere } from './use-saying.ts';

export interface TagFormProps extends Omit<TagWordsProps, 'draft' | 'here'> {
  tags: readonly BenchTag[];
  said: SaidHere | null;
  acts: TagActs;
  /** Stand while nothing is drawn. */
  row: ReactNode;
  onward: ReactNode;
}

/** What the drawn region shows. Without a drawing there is nothing to say yet. */
export function TagForm(props: TagFormProps) {
  const { t } = useWords();
  const { selected, work } = props.desk.bench;
  const { draft, waiting } = work;
  const changed = props.tags.find(({ id }) => id === draft?.replaces);
  const here = new Set<string>(
    props.tags
      .filter(({ id, state }) => state === 'standing' && id !== draft?.replaces)
      .map(({ mark }) => mark),
  );
  const chosen = props.tags.find(({ id, state }) => id === selected && state === 'standing');
  const title = changed ? t('bench.form.changeTitle', { mark: changed.mark }) : t('bench.form.title');
  return (
    <section className="section bench-form" aria-label={title}>
      <h2>{title}</h2>
      {draft ? (
        <>
          <LeftNote desk={props.desk} tag={changed} />
          <TagWords key={draft.replaces ?? ''} {...props} draft={draft} here={here} />
          {waiting.length > 0 ? (
            <p className="soft bench-hint">{t('bench.form.waiting', { count: waiting.length })}</p>
          ) : null}
        </>
      ) : (
        <>
          {chosen ? (
            <ChosenTag
              tag={chosen}
              member={props.index.byMark.get(chosen.mark)}
              acts={props.acts}
              photo={props.photo}
            />
          ) : null}
          <p className="soft bench-draw-first">{t('bench.form.drawFirst')}</p>
          {props.row}
          {props.onward}
        </>
      )}
      <SaidLine said={props.said} isBusy={draft !== null} />
    </section>
  );
}
