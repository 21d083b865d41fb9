import { useState } from 'react';
import { useWords } from '../../i18n/use-words.ts';
import { Button } from '../../parts/button.tsx';
import { Field } from '../../parts/field.tsx';

/** Few tags need a note: until one is wanted, it takes no room from the picture. */
export function NoteField({ value, onChange }: { value: string; onChange: (note: string) => void }) {
  const { t } = useWords();
  const [isWanted, setIsWanted] = useState(false);
  if (!isWanted && value === '')
    return (
      <Button look="quiet" onPress={() => setIsWanted(true)}>
        {t('bench.form.addNote')}
      </Button>
    );
  return (
    <Field
      label={t('bench.form.note')}
      value={value}
      onChange={onChange}
      maxLength={1000}
      autoFocus={isWanted}
    />
  );
}
