import { useWords } from '../../i18n/use-words.ts';
import type { Words } from '../../i18n/words.ts';
import type { SaidHere } from './use-desk.ts';

/** What became of the last thing that was said at this photo. While something new is drawn it is silent. */
export function SaidLine({ said, isBusy }: { said: SaidHere | null; isBusy: boolean }) {
  const { t } = useWords();
  return (
    <p role="status" className="bench-done">
      {said && !isBusy ? sentence(t, said) : ''}
    </p>
  );
}

function sentence(t: Words, { mark, stage, isChange, fate }: SaidHere): string {
  const words = { mark, stage: t(`common.stage.${stage}`) };
  if (fate === 'gone') return '';
  if (fate !== 'accepted') return t(`bench.form.fate.${fate}`, words);
  return isChange ? t('bench.form.changed', words) : t('bench.form.placed', words);
}
