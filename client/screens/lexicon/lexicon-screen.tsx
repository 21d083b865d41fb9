import { useMemo, useState } from 'react';
import { useQuery } from '@tanstack/react-query';
import { kindsQuery } from '../../api/kinds-query.ts';
import { QueryState } from '../../parts/query-state.tsx';
import { FAMILIES } from '#domain/lexicon/family';
import type { Kind } from '#domain/lexicon/kinds';
import { indexTerms, searchTerms } from '#domain/lexicon/search-terms';
import { useMembers } from '../../finding/use-members.ts';
import { useWords } from '../../i18n/use-words.ts';
import { LinkButton } from '../../parts/button.tsx';
import { Field } from '../../parts/field.tsx';
import { Page } from '../../parts/page.tsx';
import { IfMay } from '../../shell/if-may.tsx';
import { useHouse } from '../../shell/use-house.ts';
import { useLexicon } from '../../shell/use-lexicon.ts';
import { KindList } from './kind-list.tsx';
import { membersByKind } from './kind-members.ts';
import './lexicon.css';

const SHOWN = 24;

/** All words: those found, or those of this house first and then all by what they belong to. */
export function LexiconScreen() {
  const { t } = useWords();
  const { id: house } = useHouse();
  const [text, setText] = useState('');
  const kinds = useQuery(kindsQuery);
  return (
    <Page
      title={t('lexicon.title')}
      breadcrumb={[{ to: `/houses/${house}/members`, label: t('common.nav.members') }]}
      actions={
        <IfMay act="record">
          <LinkButton to={`/houses/${house}/lexicon/new`}>{t('lexicon.add')}</LinkButton>
        </IfMay>
      }
      lead={t('lexicon.lead')}
    >
      <div className="form" role="search">
        <Field
          label={t('lexicon.search')}
          type="search"
          autoComplete="off"
          spellCheck="false"
          maxLength={100}
          value={text}
          onChange={setText}
        />
      </div>
      <QueryState query={kinds}>
        {() => (text.trim() === '' ? <AllKinds /> : <Found text={text} />)}
      </QueryState>
    </Page>
  );
}

function Found({ text }: { text: string }) {
  const { t } = useWords();
  const { kinds } = useLexicon();
  const index = useMemo(() => indexTerms(kinds), [kinds]);
  const hits = useMemo(() => searchTerms(index, text).slice(0, SHOWN), [index, text]);
  const isNear = hits[0]?.match === 'near';
  return (
    <>
      <p className="soft" role="status">
        {hits.length === 0
          ? t('lexicon.none')
          : isNear
            ? t('lexicon.near')
            : t('lexicon.found', { count: hits.length })}
      </p>
      <KindList kinds={hits.map(({ term }) => term)} label={t('lexicon.title')} />
    </>
  );
}

function AllKinds() {
  const { t } = useWords();
  const { id: house } = useHouse();
  const lexicon = useLexicon();
  const { index } = useMembers(house);
  const members = useMemo(
    () =>
      membersByKind(
        index.entries.map(({ member }) => member),
        lexicon,
      ),
    [index, lexicon],
  );
  const count = ({ id }: Kind) => members.get(id)?.length ?? 0;
  const of = (family: Kind['family']) => lexicon.kinds.filter((kind) => kind.family === family);
  const used = lexicon.kinds.filter((kind) => count(kind) > 0).sort((a, b) => count(b) - count(a));
  return (
    <>
      {used.length === 0 ? null : (
        <section className="section">
          <h2>{t('lexicon.used')}</h2>
          <KindList kinds={used} label={t('lexicon.used')} counts={count} />
        </section>
      )}
      <div className="lexicon-families">
        {FAMILIES.map((family) => (
          <Family key={family} name={t(`lexicon.family.${family}`)} kinds={of(family)} />
        ))}
      </div>
    </>
  );
}

/** Folded, so that nobody has to step through all words to get past them. */
function Family({ name, kinds }: { name: string; kinds: readonly Kind[] }) {
  return (
    <details className="lexicon-family">
      <summary>
        <h2>{name}</h2> <span className="soft">{kinds.length}</span>
      </summary>
      <KindList kinds={kinds} label={name} />
    </details>
  );
}
