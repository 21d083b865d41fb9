import { useState } from 'react';
import { useWords } from '../../i18n/use-words.ts';
import { RadioChoice } from '../../parts/radio-choice.tsx';
import { Select } from '../../parts/select.tsx';
import { useHouse } from '../../shell/use-house.ts';
import { useCoverings } from '../coverings/use-coverings.ts';
import { MemberPicker } from '../photos/member-picker.tsx';

/** A covering by its id or a member by its mark; null while nothing is chosen. */
export type Shown = { covering: string } | { mark: string } | null;

export interface ShownChoiceProps {
  value: Shown;
  onChange: (shown: Shown) => void;
  isMissing: boolean;
}

const KINDS = ['covering', 'member'] as const;

/** What the guest may read. */
export function ShownChoice({ value, onChange, isMissing }: ShownChoiceProps) {
  const { t } = useWords();
  const { id: house } = useHouse();
  const [kind, setKind] = useState<(typeof KINDS)[number]>('covering');
  const missing = isMissing ? t('people.guests.whatMissing') : null;
  return (
    <>
      <RadioChoice
        label={t('people.guests.shows')}
        value={kind}
        onChange={(now) => {
          setKind(now);
          onChange(null);
        }}
        choices={KINDS.map((value) => ({ value, label: t(`people.guests.showsChoice.${value}`) }))}
      />
      {kind === 'covering' ? (
        <CoveringChoice value={value} onChange={onChange} error={missing} />
      ) : (
        <div>
          <MemberPicker house={house} onPick={(mark) => onChange({ mark })} />
          {value && 'mark' in value ? (
            <p role="status">{t('people.guests.chosen', { mark: value.mark })}</p>
          ) : null}
          {missing === null ? null : <p className="field-error">{missing}</p>}
        </div>
      )}
    </>
  );
}

interface CoveringChoiceProps {
  value: Shown;
  onChange: (shown: Shown) => void;
  error: string | null;
}

function CoveringChoice({ value, onChange, error }: CoveringChoiceProps) {
  const { t } = useWords();
  const { id: house } = useHouse();
  const coverings = useCoverings(house).data?.coverings;
  if (coverings?.length === 0) return <p className="soft">{t('people.guests.noCovering')}</p>;
  return (
    <Select
      label={t('people.guests.covering')}
      value={value && 'covering' in value ? value.covering : ''}
      onChange={(covering) => onChange(covering === '' ? null : { covering })}
      choices={[
        { value: '', label: t('people.guests.whatMissing') },
        ...(coverings ?? []).map(({ id, name }) => ({ value: id, label: name })),
      ]}
      error={error}
    />
  );
}
