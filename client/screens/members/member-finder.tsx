import { useDeferredValue, useMemo, useState } from 'react';
import type { MemberView } from '#domain/contract/views';
import { useWords } from '../../i18n/use-words.ts';
import { Button } from '../../parts/button.tsx';
import { EmptyState } from '../../parts/empty-state.tsx';
import { Field } from '../../parts/field.tsx';
import { RadioChoice } from '../../parts/radio-choice.tsx';
import { MemberList } from './member-list.tsx';
import { MEMBER_FILTERS, findMembers, searchable, type MemberFilter } from './member-search.ts';

/** Rows drawn at a time: a large house has thousands. */
const STEP = 200;

export function MemberFinder({ members }: { members: readonly MemberView[] }) {
  const { t } = useWords();
  const [typed, setTyped] = useState('');
  const [filter, setFilter] = useState<MemberFilter>('standing');
  const [drawn, setDrawn] = useState(STEP);
  const words = useDeferredValue(typed);
  const all = useMemo(() => searchable(members), [members]);
  const found = useMemo(() => findMembers(all, words, filter), [all, words, filter]);
  return (
    <>
      <div className="member-finder" role="search">
        <Field
          label={t('members.search')}
          type="search"
          autoComplete="off"
          value={typed}
          onChange={setTyped}
        />
        <RadioChoice
          label={t('members.show')}
          value={filter}
          onChange={setFilter}
          choices={MEMBER_FILTERS.map((value) => ({ value, label: t(`members.filter.${value}`) }))}
        />
      </div>
      <p className="soft" role="status">
        {t('members.shown', { count: found.length })}
      </p>
      {found.length === 0 ? (
        <EmptyState title={t('members.noMatch')} />
      ) : (
        <MemberList members={found.slice(0, drawn)} />
      )}
      {found.length > drawn ? (
        <div className="row">
          <Button onPress={() => setDrawn(drawn + STEP)}>{t('members.more')}</Button>
        </div>
      ) : null}
    </>
  );
}
