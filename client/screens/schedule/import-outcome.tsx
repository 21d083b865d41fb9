import type { ReactNode } from 'react';
import type { SchedulePreviewView } from '#domain/contract/views';
import { kindLabel } from '../../i18n/kind-label.ts';
import { useWords } from '../../i18n/use-words.ts';
import { ChangedMember } from './changed-member.tsx';
import { changesNothing } from './preview-words.ts';

const DRAWN = 100;

/** What importing would add, change and retire, mark by mark. */
export function ImportOutcome({ preview }: { preview: SchedulePreviewView }) {
  const { t, lang } = useWords();
  const { added, changed, retired, unchanged } = preview;
  return (
    <section className="section">
      <h2>{t('schedule.outcome.title')}</h2>
      {changesNothing(preview) ? <p>{t('schedule.outcome.nothing')}</p> : null}
      <OutcomeList title={t('schedule.outcome.added', { count: added.length })} items={added}>
        {(member) => (
          <>
            <strong>{member.mark}</strong> {kindLabel(member.kind, lang)}{' '}
            <span className="soft">{member.name}</span>
          </>
        )}
      </OutcomeList>
      <OutcomeList title={t('schedule.outcome.changed', { count: changed.length })} items={changed}>
        {(change) => <ChangedMember change={change} />}
      </OutcomeList>
      <OutcomeList title={t('schedule.outcome.retired', { count: retired.length })} items={retired}>
        {({ mark, tags }) => (
          <>
            <strong>{mark}</strong>{' '}
            {tags > 0 ? (
              <span className="soft">
                {t('schedule.outcome.withTags', { tags: t('common.count.tags', { count: tags }) })}
              </span>
            ) : null}
          </>
        )}
      </OutcomeList>
      <p className="soft">{t('schedule.outcome.unchanged', { count: unchanged })}</p>
    </section>
  );
}

interface OutcomeListProps<T> {
  title: string;
  items: readonly T[];
  children: (item: T) => ReactNode;
}

function OutcomeList<T>({ title, items, children }: OutcomeListProps<T>) {
  const { t } = useWords();
  if (items.length === 0) return null;
  return (
    <details className="disclosure" open={items.length <= 20}>
      <summary>{title}</summary>
      <ul className="outcome-list plain-list">
        {items.slice(0, DRAWN).map((item, i) => (
          <li key={i}>{children(item)}</li>
        ))}
      </ul>
      {items.length > DRAWN ? (
        <p className="soft">{t('schedule.outcome.andMore', { count: items.length - DRAWN })}</p>
      ) : null}
    </details>
  );
}
