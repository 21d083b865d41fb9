import { useWords } from '../../i18n/use-words.ts';
import { Field } from '../../parts/field.tsx';
import { isLongEnough } from './credentials.ts';

interface NewPasswordFieldProps {
  label: string;
  value: string;
  onChange: (value: string) => void;
  /** Whether somebody has tried to go on: before that nothing is called too short. */
  wasTried: boolean;
}

export function NewPasswordField({ label, value, onChange, wasTried }: NewPasswordFieldProps) {
  const { t } = useWords();
  const shortness = t('account.missing.shortPassword', { count: value.length });
  return (
    <Field
      label={label}
      description={t('account.link.passwordHint')}
      type="password"
      name="new-password"
      autoComplete="new-password"
      value={value}
      onChange={onChange}
      error={wasTried && !isLongEnough(value) ? shortness : null}
    />
  );
}
