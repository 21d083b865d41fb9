import { useWords } from '../../i18n/use-words.ts';
import type { Words } from '../../i18n/words.ts';
import type { SaidHere } from './use-saying.ts';

/** What became of the last thing that was said at this photo. While something new is drawn it is silent. */
export function SaidLine({ said, isBusy }: { said: SaidHere | null; isBusy: boolean }) {
  const { t } = useWords();
  return (
    <p role="status" className="bench-done">
      {said && !isBusy ? sentence(t, said) : ''}
    </p>
  );
}

const DONE = { place: 'placed', supersede: 'changed', withdraw: 'withdrawn' } as const;

function sentence(t: Words, { mark, stage, is, fate }: SaidHere): string {
  const words = { mark, stage: t(`common.stage.${stage}`) };
  // A withdrawal leaves no drawing behind; its refusal stands above, with the reason.
  if (fate === 'gone' || (fate === 'refused' && is === 'withdraw')) return '';
  if (fate !== 'accepted') return t(`bench.form.fate.${fate}`, words);
  return t(`bench.form.${DONE[is]}`, words);
}
