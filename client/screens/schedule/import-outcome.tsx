import type { ReactNode } from 'react';
import type { SchedulePreviewView } from '#domain/contract/schedule-views';
import { kindLabel } from '../../i18n/kind-label.ts';
import { useLexicon } from '../../shell/use-lexicon.ts';
import { useWords } from '../../i18n/use-words.ts';
import { Notice } from '../../parts/notice.tsx';
import { ChangedMember } from './changed-member.tsx';
import { countBadRows, whyNothing } from './preview-words.ts';

const DRAWN = 100;
const OPEN = 20;

/** What importing would add and change, mark by mark; what it would retire stands at that choice. */
export function ImportOutcome({ preview }: { preview: SchedulePreviewView }) {
  const { t, lang } = useWords();
  const lexicon = useLexicon();
  const { added, changed, unchanged } = preview;
  return (
    <section className="section">
      <h2>{t('schedule.outcome.title')}</h2>
      <NothingToImport preview={preview} />
      <OutcomeList title={t('schedule.outcome.added', { count: added.length })} items={added}>
        {(member) => (
          <>
            <strong>{member.mark}</strong> {kindLabel(member.kind, lang, lexicon)}{' '}
            <span className="soft">{member.name}</span>
          </>
        )}
      </OutcomeList>
      <OutcomeList title={t('schedule.outcome.changed', { count: changed.length })} items={changed}>
        {(change) => <ChangedMember change={change} />}
      </OutcomeList>
      {unchanged > 0 ? <p className="soft">{t('schedule.outcome.unchanged', { count: unchanged })}</p> : null}
    </section>
  );
}

function NothingToImport({ preview }: { preview: SchedulePreviewView }) {
  const { t } = useWords();
  const why = whyNothing(preview);
  if (why === null) return null;
  return (
    <Notice tone={why === 'allKnown' ? 'info' : 'problem'}>
      {t(`schedule.nothing.${why}`, { count: countBadRows(preview) })}
    </Notice>
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
    <details className="disclosure" open={items.length <= OPEN}>
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
