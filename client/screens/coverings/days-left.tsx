import { useWords } from '../../i18n/use-words.ts';

/** How long something can still be photographed; null: no day is planned. */
export function DaysLeft({ days }: { days: number | null }) {
  const { t } = useWords();
  if (days === null) return <span className="soft">{t('coverings.noDay')}</span>;
  if (days < 0) return <span className="act-text">{t('coverings.left.past', { count: -days })}</span>;
  if (days === 0) return <span className="act-text">{t('coverings.left.today')}</span>;
  return (
    <span className={days <= 3 ? 'act-text' : undefined}>{t('coverings.left.days', { count: days })}</span>
  );
}
