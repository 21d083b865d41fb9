import { useWords } from '../../i18n/use-words.ts';
import { Checkbox } from '../../parts/checkbox.tsx';
import type { Entry } from './desk-state.ts';

export interface InARowProps {
  fresh: Entry;
  isOn: boolean;
  onChange: (isOn: boolean) => void;
}

/**
 * Offered where a next member is known: a row of posts is then one press each. It ends with the photo, or a
 * finger that only wants to scroll the next one would put a tag on record.
 */
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
