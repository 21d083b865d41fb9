import { useWords } from '../../i18n/use-words.ts';
import { Select } from '../../parts/select.tsx';

export interface DaysSelectProps {
  label: string;
  description?: string;
  choices: readonly number[];
  value: number;
  onChange: (days: number) => void;
}

/** How many days a link holds. */
export function DaysSelect({ label, description, choices, value, onChange }: DaysSelectProps) {
  const { t } = useWords();
  return (
    <Select
      label={label}
      description={description}
      value={String(value)}
      onChange={(text) => onChange(Number(text))}
      choices={choices.map((days) => ({
        value: String(days),
        label: t('people.forDays', { count: days }),
      }))}
    />
  );
}
