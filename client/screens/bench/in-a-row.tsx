import { useState } from 'react';
import { useWords } from '../../i18n/use-words.ts';
import { browserStorage } from '../../outbox/browser-storage.ts';
import { Checkbox } from '../../parts/checkbox.tsx';
import type { Entry } from './desk-state.ts';

const PREFIX = 'arakabe.in-a-row.';

/** Whether each drawing is placed at once as the next of a row; stays so from photo to photo. */
export function useInARow(house: string): [boolean, (isOn: boolean) => void] {
  const session = browserStorage('sessionStorage');
  const [isOn, setIsOn] = useState(() => session?.getItem(PREFIX + house) === 'on');
  const set = (on: boolean) => {
    setIsOn(on);
    if (on) session?.setItem(PREFIX + house, 'on');
    else session?.removeItem(PREFIX + house);
  };
  return [isOn, set];
}

export interface InARowProps {
  fresh: Entry;
  isOn: boolean;
  onChange: (isOn: boolean) => void;
}

/** Offered where a next member is known: a row of posts is then one press each. */
export function InARow({ fresh: { mark, stage }, isOn, onChange }: InARowProps) {
  const { t } = useWords();
  const isKnown = mark !== '' && stage !== null;
  if (!isKnown && !isOn) return null;
  return (
    <div>
      <Checkbox isSelected={isOn} onChange={onChange}>
        {t('bench.row.label')}
      </Checkbox>
      <p className="soft bench-hint" role="status">
        {isKnown
          ? t(isOn ? 'bench.row.next' : 'bench.row.likely', { mark, stage: t(`common.stage.${stage}`) })
          : t('bench.row.unknown')}
      </p>
    </div>
  );
}
