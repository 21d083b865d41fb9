import { useQuery } from '@tanstack/react-query';
import { useParams } from 'react-router';
import { kindsQuery } from '../../api/kinds-query.ts';
import { termsQuery } from '../../api/terms-query.ts';
import { nameOfKind } from '../../i18n/kind-label.ts';
import { useWords } from '../../i18n/use-words.ts';
import { Page } from '../../parts/page.tsx';
import { QueryState } from '../../parts/query-state.tsx';
import { NotFound } from '../../shell/not-found.tsx';
import { useHouse } from '../../shell/use-house.ts';
import { useLexicon } from '../../shell/use-lexicon.ts';
import { EMPTY_TERM, termDraft } from './term-draft.ts';
import { TermForm } from './term-form.tsx';
import './lexicon.css';

/** Enters a kind, or changes one for this house. */
export function TermFormScreen() {
  const { t, lang } = useWords();
  const { id: house } = useHouse();
  const { kind: id } = useParams();
  const kinds = useQuery(kindsQuery);
  const query = useQuery(termsQuery(house));
  const kind = useLexicon().byId.get(id ?? '');
  const list = { to: `/houses/${house}/lexicon`, label: t('lexicon.title') };
  if (id === undefined)
    return (
      <Page title={t('lexicon.edit.newTitle')} breadcrumb={[list]}>
        <TermForm id={null} start={EMPTY_TERM} />
      </Page>
    );
  return (
    <QueryState query={kinds}>
      {() => (
        <QueryState query={query}>
          {({ terms }) => {
            if (!kind) return <NotFound />;
            // The names that came with the program are found anyway; the form has what the crew said.
            const own = terms.find((term) => term.id === id);
            const start = termDraft(own ?? kind, own?.does ?? '');
            return (
              <Page
                title={t('lexicon.edit.changeTitle', { name: nameOfKind(kind, lang) })}
                breadcrumb={[list, { to: `${list.to}/${id}`, label: kind.kanji || kind.en }]}
                lead={t('lexicon.edit.hint')}
              >
                <TermForm key={id} id={id} start={start} />
              </Page>
            );
          }}
        </QueryState>
      )}
    </QueryState>
  );
}
