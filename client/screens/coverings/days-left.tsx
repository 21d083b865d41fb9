import { useWords } from '../../i18n/use-words.ts';

interface DaysLeftProps {
  /** null: no day is planned. */
  days: number | null;
  /** Set where nothing has to be done, however near the day. */
  isCalm?: boolean;
}

/** How long something can still be photographed. */
export function DaysLeft({ days, isCalm = false }: DaysLeftProps) {
  const { t } = useWords();
  if (days === null) return <span className="soft">{t('coverings.noDay')}</span>;
  const urgent = isCalm ? 'soft' : 'act-text';
  if (days < 0) return <span className={urgent}>{t('coverings.left.past', { count: -days })}</span>;
  if (days === 0) return <span className={urgent}>{t('coverings.left.today')}</span>;
  const look = isCalm || days <= 3 ? urgent : undefined;
  return <span className={look}>{t('coverings.left.days', { count: days })}</span>;
}
