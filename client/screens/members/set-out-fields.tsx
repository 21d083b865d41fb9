import { useWords } from '../../i18n/use-words.ts';
import { Field } from '../../parts/field.tsx';
import { useHouse } from '../../shell/use-house.ts';
import { wrongLengths, type MemberDraft } from './member-draft.ts';

const ROWS = [
  ['from', 'to'],
  ['level', 'base', 'top'],
  ['width', 'depth'],
] as const;

export interface SetOutFieldsProps {
  draft: MemberDraft;
  onChange: (draft: MemberDraft) => void;
}

/** Where a member lies: between which marks, how high, how thick. */
export function SetOutFields({ draft, onChange }: SetOutFieldsProps) {
  const { t } = useWords();
  const { unit } = useHouse();
  const wrong: readonly string[] = wrongLengths(draft, unit);
  return (
    <fieldset className="form">
      <legend>{t('members.setOut.title')}</legend>
      <p className="soft">{t(`members.setOut.hint.${unit}`)}</p>
      {ROWS.map((row) => (
        <div className="pair" key={row[0]}>
          {row.map((field) => (
            <Field
              key={field}
              label={t(`schedule.field.${field}`)}
              autoComplete="off"
              maxLength={field === 'level' ? 20 : 60}
              value={draft.setOut[field]}
              onChange={(text) => onChange({ ...draft, setOut: { ...draft.setOut, [field]: text } })}
              error={wrong.includes(field) ? t('members.setOut.noLength') : null}
            />
          ))}
        </div>
      ))}
    </fieldset>
  );
}
