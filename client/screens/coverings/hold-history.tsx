import { useQuery } from '@tanstack/react-query';
import { call } from '../../api/call.ts';
import { keys } from '../../api/keys.ts';
import { useWords } from '../../i18n/use-words.ts';
import { QueryState } from '../../parts/query-state.tsx';
import { useHouse } from '../../shell/use-house.ts';
import { StatementList } from '../ledger/statement-list.tsx';

/** All that was ever said of a covering, the newest first: also what was taken back. */
export function HoldHistory({ covering }: { covering: string }) {
  const { t } = useWords();
  const { id: house } = useHouse();
  const query = useQuery({
    queryKey: keys.coveringLedger(house, covering),
    queryFn: () => call('readCoveringLedger', { params: { covering } }),
  });
  return (
    <section className="section">
      <h2>{t('hold.history')}</h2>
      <QueryState query={query}>
        {({ entries }) => <StatementList entries={entries.toReversed()} label={t('hold.history')} />}
      </QueryState>
    </section>
  );
}
