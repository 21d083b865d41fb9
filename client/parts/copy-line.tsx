import { useState } from 'react';
import { useWords } from '../i18n/use-words.ts';
import { Button } from './button.tsx';

/** Something to hand on: selected when touched, copied by the button where the browser allows it. */
export function CopyLine({ label, text }: { label: string; text: string }) {
  const { t } = useWords();
  const [state, setState] = useState<'idle' | 'copied' | 'refused'>('idle');
  const copy = async () => {
    try {
      await navigator.clipboard.writeText(text);
      setState('copied');
    } catch {
      setState('refused');
    }
  };
  return (
    <div className="copy-line">
      <input
        className="field-input"
        readOnly
        aria-label={label}
        value={text}
        onFocus={(event) => event.target.select()}
      />
      <Button onPress={() => void copy()}>{t('common.copy')}</Button>
      <span role="status">{state === 'idle' ? '' : t(`common.copyState.${state}`)}</span>
    </div>
  );
}
