import type { LedgerEntryView } from '#domain/contract/views';
import { formatInstant } from '../../i18n/format.ts';
import type { Telling } from './telling.ts';
import { StatementText } from './statement-list.tsx';

export function LedgerEntry({ entry, telling }: { entry: LedgerEntryView; telling: Telling }) {
  const { t, lang, zone } = telling;
  // Counted as people count; the ledger itself numbers from 0.
  return (
    <li className="ledger-entry">
      <p className="ledger-entry-head">
        <span>{t('ledger.entry', { number: entry.seq + 1 })}</span>
        <time dateTime={entry.at}>{formatInstant(entry.at, zone, lang)}</time>
      </p>
      <StatementText entry={entry} telling={telling} />
      <details className="disclosure">
        <summary>{t('ledger.content')}</summary>
        <dl className="facts">
          <dt>{t('ledger.kind')}</dt>
          <dd>
            <code>{entry.kind}</code> {t('ledger.version', { version: entry.version })}
          </dd>
          <dt>{t('ledger.leaf')}</dt>
          <dd className="hash">{entry.leaf}</dd>
          <dt>{t('ledger.headAfter')}</dt>
          <dd className="hash">{entry.head}</dd>
          <dt>{t('ledger.payload')}</dt>
          <dd>
            <pre className="payload" tabIndex={0}>
              {JSON.stringify(entry.payload, null, 2)}
            </pre>
          </dd>
        </dl>
      </details>
    </li>
  );
}
