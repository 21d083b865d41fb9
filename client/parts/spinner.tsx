import { useWords } from '../i18n/use-words.ts';

export function Spinner({ label }: { label?: string }) {
  const { t } = useWords();
  return (
    <p className="spinner" role="status">
      <svg viewBox="0 0 24 24" aria-hidden="true">
        <path d="M4 4.5H20M12 4.5V20M12 12H18.5M7 11V20M3 20H21" pathLength={100} />
      </svg>
      <span>{label ?? t('common.loading')}</span>
    </p>
  );
}
