import type { RefObject } from 'react';
import { FieldError, Input, Label, TextField } from 'react-aria-components';

interface WordsFieldProps {
  label: string;
  /** And not seen. */
  isLabelHeard?: boolean;
  text: string;
  onText: (text: string) => void;
  maxLength: number;
  error?: string | null;
  field: RefObject<HTMLInputElement | null>;
}

/** One line of words beside the button that says them; a key leads into it. */
export function WordsField(props: WordsFieldProps) {
  const { label, isLabelHeard = false, text, onText, maxLength, error = null, field } = props;
  return (
    <TextField
      className="field"
      value={text}
      onChange={onText}
      maxLength={maxLength}
      validationBehavior="aria"
      isInvalid={error !== null}
    >
      <Label className={isLabelHeard ? 'out-of-sight' : 'field-label'}>{label}</Label>
      <Input ref={field} className="field-input" />
      <FieldError className="field-error">{error}</FieldError>
    </TextField>
  );
}
