import { useInfiniteQuery } from '@tanstack/react-query';
import { mayAct } from '#domain/contract/acts';
import { keys } from '../../api/keys.ts';
import { useWords } from '../../i18n/use-words.ts';
import { Button } from '../../parts/button.tsx';
import { EmptyState } from '../../parts/empty-state.tsx';
import { ProblemNotice } from '../../parts/notice.tsx';
import { Page } from '../../parts/page.tsx';
import { Spinner } from '../../parts/spinner.tsx';
import { useHouse } from '../../shell/use-house.ts';
import { ArchiveSection } from './archive-section.tsx';
import { LedgerEntry } from './ledger-entry.tsx';
import { LedgerHead } from './ledger-head.tsx';
import { LedgerStamps } from './ledger-stamps.tsx';
import { olderPage, readLedgerPage } from './ledger-pages.ts';
import { useTelling } from './use-telling.ts';

export function LedgerScreen() {
  const { t } = useWords();
  const { id: house, role } = useHouse();
  const telling = useTelling();
  const query = useInfiniteQuery({
    queryKey: keys.ledger(house),
    queryFn: ({ pageParam, signal }) => readLedgerPage(house, pageParam, signal),
    initialPageParam: null as number | null,
    getNextPageParam: olderPage,
  });
  const newest = query.data?.pages[0];
  const entries = query.data?.pages.flatMap((page) => page.entries) ?? [];
  return (
    <Page title={t('ledger.title')} lead={t('ledger.lead')}>
      {newest ? <LedgerHead head={newest.head} size={newest.size} /> : null}
      <LedgerStamps />
      {mayAct(role, 'export') ? <ArchiveSection house={house} /> : null}
      {query.isPending ? <Spinner /> : null}
      {newest?.size === 0 ? <EmptyState title={t('ledger.none')} /> : null}
      <ol className="plain-list" aria-label={t('ledger.list')}>
        {entries.map((entry) => (
          <LedgerEntry key={entry.seq} entry={entry} telling={telling} />
        ))}
      </ol>
      <ProblemNotice
        error={query.error}
        actions={<Button onPress={() => void query.refetch()}>{t('common.tryAgain')}</Button>}
      />
      {query.hasNextPage ? (
        <div className="row">
          <Button isPending={query.isFetchingNextPage} onPress={() => void query.fetchNextPage()}>
            {t('ledger.older')}
          </Button>
        </div>
      ) : null}
    </Page>
  );
}
