import { useWords } from '../i18n/use-words.ts';
import { Button } from './button.tsx';
import { Notice, ProblemNotice } from './notice.tsx';

export interface SaveRowProps {
  save: { readonly error: unknown; readonly isSuccess: boolean; readonly isPending: boolean };
  /** Said once it is saved. */
  saved: string;
}

/** The end of a form that stays: what was wrong, that it is saved, and the button. */
export function SaveRow({ save, saved }: SaveRowProps) {
  const { t } = useWords();
  return (
    <>
      <ProblemNotice error={save.error} keepsTyped />
      {save.isSuccess ? <Notice tone="done">{saved}</Notice> : null}
      <div className="row">
        <Button type="submit" look="act" isPending={save.isPending}>
          {t('common.save')}
        </Button>
      </div>
    </>
  );
}
