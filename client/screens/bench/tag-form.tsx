import type { ReactNode } from 'react';
import { useWords } from '../../i18n/use-words.ts';
import type { BenchTag } from './bench-tags.ts';
import { SaidLine } from './said-line.tsx';
import { TagWords, type TagWordsProps } from './tag-words.tsx';
import type { SaidHere } from './use-saying.ts';

export interface TagFormProps extends Omit<TagWordsProps, 'draft'> {
  tags: readonly BenchTag[];
  said: SaidHere | null;
  /** Stands while nothing is drawn. */
  row: ReactNode;
}

/** What the drawn region shows. Without a drawing there is nothing to say yet. */
export function TagForm(props: TagFormProps) {
  const { t } = useWords();
  const { draft, waiting } = props.desk.bench.work;
  const changed = props.tags.find(({ id }) => id === draft?.replaces);
  const title = changed ? t('bench.form.changeTitle', { mark: changed.mark }) : t('bench.form.title');
  return (
    <section className="section bench-form" aria-label={title}>
      <h2>{title}</h2>
      {draft ? (
        <>
          <TagWords key={draft.replaces ?? ''} {...props} draft={draft} />
          {waiting.length > 0 ? (
            <p className="soft bench-hint">{t('bench.form.waiting', { count: waiting.length })}</p>
          ) : null}
        </>
      ) : (
        <>
          <p className="soft">{t('bench.form.drawFirst')}</p>
          {props.row}
        </>
      )}
      <SaidLine said={props.said} isBusy={draft !== null} />
    </section>
  );
}
