import { useWords } from '../../i18n/use-words.ts';
import { LinkButton } from '../../parts/button.tsx';

/** To the next photo, where the thumb is after a tag: the way at the top is out of sight on a phone. */
export function Onward({ to }: { to: string }) {
  const { t } = useWords();
  return (
    <p className="bench-onward">
      <LinkButton to={to}>{t('bench.onward')}</LinkButton>
    </p>
  );
}
