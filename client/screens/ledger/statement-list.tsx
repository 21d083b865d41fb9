import { Link } from 'react-router';
import type { LedgerEntryView } from '#domain/contract/views';
import { formatInstant, formatTime } from '../../i18n/format.ts';
import { useHouse } from '../../shell/use-house.ts';
import { statementSentence } from './statement-sentence.ts';
import type { Telling } from './telling.ts';
import { statementTarget } from './statement-target.ts';
import { useTelling } from './use-telling.ts';
import './ledger.css';

export interface StatementListProps {
  entries: readonly LedgerEntryView[];
  /** Names the list for whoever hears it. */
  label: string;
  /** Only the time of day: for lists within one day. */
  isOneDay?: boolean;
}

/** What was said, when and by whom, in plain words; in the order given. */
export function StatementList({ entries, label, isOneDay = false }: StatementListProps) {
  const telling = useTelling();
  return (
    <ol className="statements plain-list" aria-label={label}>
      {entries.map((entry) => (
        <li key={entry.seq}>
          <time dateTime={entry.at} className="soft">
            {isOneDay
              ? formatTime(entry.at, telling.zone, telling.lang)
              : formatInstant(entry.at, telling.zone, telling.lang)}
          </time>
          <StatementText entry={entry} telling={telling} />
        </li>
      ))}
    </ol>
  );
}

export function StatementText({ entry, telling }: { entry: LedgerEntryView; telling: Telling }) {
  const { id: house } = useHouse();
  const target = statementTarget(house, entry);
  const text = statementSentence(telling, entry);
  return (
    <div>
      <p>{target ? <Link to={target}>{text}</Link> : text}</p>
      <p className="soft">{entry.by?.name ?? telling.t('common.nobody')}</p>
    </div>
  );
}
