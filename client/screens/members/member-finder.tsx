import { useEffect, useMemo, useState } from 'react';
import { useSearchParams } from 'react-router';
import { searchMembers, type MemberIndex } from '../../finding/member-index.ts';
import { useWords } from '../../i18n/use-words.ts';
import { EmptyState } from '../../parts/empty-state.tsx';
import { Field } from '../../parts/field.tsx';
import { RadioChoice } from '../../parts/radio-choice.tsx';
import { MEMBER_FILTERS, belongs, listAddress, readListPlace } from './list-address.ts';
import { MemberList } from './member-list.tsx';

/** Some browsers refuse an address that changes at each key. */
const PAUSE_MS = 300;

export function MemberFinder({ index }: { index: MemberIndex }) {
  const { t } = useWords();
  const [search, setSearch] = useSearchParams();
  const [start] = useState(() => readListPlace(search));
  const [words, setWords] = useState(start.words);
  const [filter, setFilter] = useState(start.filter);
  const found = useMemo(
    () => searchMembers(index, words).filter((member) => belongs(member, filter)),
    [index, words, filter],
  );
  const address = listAddress({ words, filter });
  const isChanged = address !== listAddress({ words: start.words, filter: start.filter });
  const [wasChanged, setWasChanged] = useState(false);
  if (isChanged && !wasChanged) setWasChanged(true);
  useEffect(() => {
    if (!wasChanged) return;
    const write = () => setSearch(address, { replace: true, preventScrollReset: true });
    const pause = setTimeout(write, PAUSE_MS);
    return () => clearTimeout(pause);
  }, [address, wasChanged, setSearch]);
  return (
    <>
      <div className="member-finder" role="search">
        <Field
          label={t('members.search')}
          type="search"
          autoComplete="off"
          value={words}
          onChange={setWords}
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
        <MemberList members={found} place={{ words, filter }} at={wasChanged ? null : start.at} />
      )}
    </>
  );
}
