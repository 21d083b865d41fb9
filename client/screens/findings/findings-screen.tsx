import { Link, useSearchParams } from 'react-router';
import type { FindingsView } from '#domain/contract/findings';
import { groupBy } from '#domain/group-by';
import { FINDING_KINDS, type FindingKind } from '#domain/record/findings/kinds';
import { formatList } from '../../i18n/format.ts';
import { useWords } from '../../i18n/use-words.ts';
import { Button } from '../../parts/button.tsx';
import { EmptyState } from '../../parts/empty-state.tsx';
import { ProblemNotice } from '../../parts/notice.tsx';
import { Page } from '../../parts/page.tsx';
import { Select } from '../../parts/select.tsx';
import { Spinner } from '../../parts/spinner.tsx';
import { useHouse } from '../../shell/use-house.ts';
import { FindingGroup } from './finding-group.tsx';
import { useAnswering } from './use-answering.tsx';
import { useFindings } from './use-findings.ts';
import './findings.css';

/** Everything that a person must look at: what, why, which photos and tags, what to do. */
export function FindingsScreen() {
  const { t } = useWords();
  const { id: house } = useHouse();
  const [search] = useSearchParams();
  const state = search.get('state') === 'accepted' ? ('accepted' as const) : ('open' as const);
  const kind = FINDING_KINDS.find((known) => known === search.get('kind'));
  const query = useFindings(house, kind === undefined ? { state } : { state, kind });
  const pages = query.data?.pages ?? [];
  const found = pages.flatMap(({ findings }) => findings);
  const answering = useAnswering(found);
  const counts = pages.at(-1)?.counts;
  const retry = <Button onPress={() => void query.refetch()}>{t('common.tryAgain')}</Button>;
  return (
    <Page title={t('findings.title')} lead={t('findings.lead')}>
      {counts ? <Choice counts={counts} state={state} kind={kind} /> : <Spinner />}
      {counts && found.length === 0 ? <Nothing state={state} kind={kind} /> : null}
      {[...groupBy(found, (finding) => finding.kind)].map(([of, findings]) => (
        <FindingGroup key={of} kind={of} findings={findings} answering={answering} />
      ))}
      <ProblemNotice error={query.error} actions={retry} />
      {query.hasNextPage ? (
        <div className="row">
          <Button isPending={query.isFetchingNextPage} onPress={() => void query.fetchNextPage()}>
            {t('findings.more')}
          </Button>
        </div>
      ) : null}
      <p className="soft">{t('common.caution')}</p>
      {answering.dialog}
    </Page>
  );
}

/** Says what was looked for, so that nobody takes it for a word about the rest. */
function Nothing({ state, kind }: { state: 'open' | 'accepted'; kind: FindingKind | undefined }) {
  const { t, lang } = useWords();
  if (state === 'accepted')
    return <EmptyState title={t('findings.noneAccepted')}>{t('findings.noneAcceptedText')}</EmptyState>;
  const looked = kind === undefined ? FINDING_KINDS : [kind];
  const checks = formatList(
    looked.map((one) => t(`findings.kind.${one}`)),
    lang,
  );
  return (
    <EmptyState title={t('findings.none')}>
      {t('findings.noneText', { count: looked.length, checks })} {t('findings.noneBeyond')}
    </EmptyState>
  );
}

interface ChoiceProps {
  counts: FindingsView['counts'];
  state: 'open' | 'accepted';
  kind: FindingsView['counts'][number]['kind'] | undefined;
}

/** Open or accepted, and of which kind. */
function Choice({ counts, state, kind }: ChoiceProps) {
  const { t } = useWords();
  const [, setSearch] = useSearchParams();
  const total = (of: 'open' | 'accepted') => counts.reduce((sum, count) => sum + count[of], 0);
  const listed = counts.filter((count) => count[state] > 0 || count.kind === kind);
  const address = (to: ChoiceProps['state'], of: string) => {
    const words = { ...(to === 'accepted' ? { state: to } : {}), ...(of === '' ? {} : { kind: of }) };
    return new URLSearchParams(words);
  };
  return (
    <div className="finding-choice">
      <nav aria-label={t('findings.states')}>
        <ul className="plain-list row">
          {(['open', 'accepted'] as const).map((to) => (
            <li key={to}>
              <Link
                className="line-link"
                to={`?${address(to, '').toString()}`}
                aria-current={to === state ? 'true' : undefined}
              >
                {t(`findings.${to}`, { count: total(to) })}
              </Link>
            </li>
          ))}
        </ul>
      </nav>
      {listed.length > 1 || kind !== undefined ? (
        <Select
          label={t('findings.kinds')}
          value={kind ?? ''}
          onChange={(of) => setSearch(address(state, of), { replace: true })}
          choices={[
            { value: '', label: t('findings.everyKind') },
            ...listed.map((count) => ({
              value: count.kind,
              label: t('findings.ofKind', { kind: t(`findings.kind.${count.kind}`), count: count[state] }),
            })),
          ]}
        />
      ) : null}
    </div>
  );
}
