import type { KeyboardEvent, RefObject } from 'react';
import { FieldError, Label, TextArea, TextField } from 'react-aria-components';

interface WordsFieldProps {
  label: string;
  /** And not seen. */
  isLabelHeard?: boolean;
  text: string;
  onText: (text: string) => void;
  maxLength: number;
  error?: string | null;
  field: RefObject<HTMLTextAreaElement | null>;
}

/** A few words beside the button that says them, in as many lines as they need; a key leads into it, Enter says them. */
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
      <TextArea ref={field} className="field-input review-field" rows={2} onKeyDown={sayByEnter} />
      <FieldError className="field-error">{error}</FieldError>
    </TextField>
  );
}

/** A reason is one line, however long. */
function sayByEnter(event: KeyboardEvent<HTMLTextAreaElement>): void {
  if (event.key !== 'Enter' || event.nativeEvent.isComposing) return;
  event.preventDefault();
  event.currentTarget.form?.requestSubmit();
}
