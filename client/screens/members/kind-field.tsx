import { useMemo } from 'react';
import { indexTerms, searchTerms } from '#domain/lexicon/search-terms';
import { nameOfKind } from '../../i18n/kind-label.ts';
import { useWords } from '../../i18n/use-words.ts';
import { SearchSelect } from '../../parts/search-select.tsx';
import { useLexicon } from '../../shell/use-lexicon.ts';

const OFFERED = 8;

/** The kind of a member as it is typed; what is near to a word of the lexicon is offered, never taken unasked. */
export function KindField({ value, onChange }: { value: string; onChange: (kind: string) => void }) {
  const { t, lang } = useWords();
  const { kinds, byId } = useLexicon();
  const index = useMemo(() => indexTerms(kinds), [kinds]);
  const choices = useMemo(() => {
    const found = searchTerms(index, value).map(({ term }) => term);
    return (value.trim() === '' ? kinds : found).slice(0, OFFERED);
  }, [index, kinds, value]);
  return (
    <SearchSelect
      label={t('members.fields.kind')}
      description={t('members.fields.kindHint')}
      choices={choices.map((kind) => ({
        id: kind.id,
        label: kind.kanji || kind.en,
        hint: nameOfKind({ ...kind, kanji: '' }, lang),
      }))}
      value={null}
      onChange={(id) => {
        const kind = id === null ? undefined : byId.get(id);
        if (kind) onChange(kind.kanji || kind.en);
      }}
      input={value}
      onInput={onChange}
      allowsOther
      openLabel={t('common.showList')}
    />
  );
}
