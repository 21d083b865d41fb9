import { useWords } from '../../i18n/use-words.ts';

export function LedgerHead({ head, size }: { head: string; size: number }) {
  const { t } = useWords();
  return (
    <div className="ledger-head">
      <h2>{t('ledger.head', { count: size })}</h2>
      <code className="hash">{head}</code>
      <p className="soft">{t('ledger.headHint')}</p>
    </div>
  );
}
