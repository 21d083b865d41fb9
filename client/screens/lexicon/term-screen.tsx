import { useQuery } from '@tanstack/react-query';
import { useParams } from 'react-router';
import type { TermView } from '#domain/contract/terms';
import type { Kind } from '#domain/lexicon/kinds';
import { ABOUT } from '#domain/lexicon/about/about';
import { kindsQuery } from '../../api/kinds-query.ts';
import { termsQuery } from '../../api/terms-query.ts';
import { nameOfKind } from '../../i18n/kind-label.ts';
import { useWords } from '../../i18n/use-words.ts';
import { LinkButton } from '../../parts/button.tsx';
import { Page } from '../../parts/page.tsx';
import { QueryState } from '../../parts/query-state.tsx';
import { NotFound } from '../../shell/not-found.tsx';
import { IfMay } from '../../shell/if-may.tsx';
import { useHouse } from '../../shell/use-house.ts';
import { useLexicon } from '../../shell/use-lexicon.ts';
import { KindMembers } from './kind-members-list.tsx';
import { KindPhotos } from './kind-photos.tsx';
import { RemoveTerm } from './remove-term.tsx';
import { TermFacts } from './term-facts.tsx';
import './lexicon.css';

/** One kind: its names, what it does, and what this house has of it. */
export function TermScreen() {
  const { id: house } = useHouse();
  const { kind: id = '' } = useParams();
  const kinds = useQuery(kindsQuery);
  const query = useQuery(termsQuery(house));
  const kind = useLexicon().byId.get(id);
  return (
    <QueryState query={kinds}>
      {() => (
        <QueryState query={query}>
          {({ terms }) =>
            kind ? <TermPage key={id} kind={kind} own={terms.find((term) => term.id === id)} /> : <NotFound />
          }
        </QueryState>
      )}
    </QueryState>
  );
}

function TermPage({ kind, own }: { kind: Kind; own: TermView | undefined }) {
  const { t, lang } = useWords();
  const { id: house } = useHouse();
  const [does, ...sentences] = ABOUT[kind.id]?.[lang === 'ja' ? 1 : 0] ?? [''];
  return (
    <Page
      title={kind.kanji || kind.en}
      breadcrumb={[{ to: `/houses/${house}/lexicon`, label: t('lexicon.title') }]}
      actions={
        <IfMay act="record">
          <LinkButton to={`/houses/${house}/lexicon/${kind.id}/change`}>{t('lexicon.change')}</LinkButton>
          {own ? (
            <RemoveTerm term={own.id} name={nameOfKind(kind, lang)} isBuiltIn={kind.id in ABOUT} />
          ) : null}
        </IfMay>
      }
    >
      <p className="lexicon-does">{own?.does || does}</p>
      {own ? <p className="soft">{t(ABOUT[kind.id] ? 'lexicon.renamed' : 'lexicon.own')}</p> : null}
      <TermFacts kind={kind} fastened={sentences[0]} seen={sentences[1]} />
      <section className="section">
        <h2>{t('lexicon.photos')}</h2>
        <KindPhotos kind={kind} />
      </section>
      <section className="section">
        <h2>{t('lexicon.members')}</h2>
        <KindMembers kind={kind} />
      </section>
    </Page>
  );
}
