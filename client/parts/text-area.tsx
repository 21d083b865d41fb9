import type { RefObject } from 'react';
import {
  FieldError,
  Label,
  Text,
  TextArea as AriaTextArea,
  TextField,
  type TextFieldProps,
} from 'react-aria-components';

export interface TextAreaProps extends Omit<
  TextFieldProps,
  'className' | 'style' | 'children' | 'isInvalid'
> {
  label: string;
  description?: string | undefined;
  error?: string | null | undefined;
  rows?: number;
  /** To lead into it. */
  field?: RefObject<HTMLTextAreaElement | null>;
}

export function TextArea({ label, description, error, rows = 4, field, ...rest }: TextAreaProps) {
  return (
    <TextField {...rest} validationBehavior="aria" isInvalid={Boolean(error)} className="field">
      <Label className="field-label">{label}</Label>
      {description ? (
        <Text slot="description" className="field-description">
          {description}
        </Text>
      ) : null}
      <AriaTextArea ref={field} className="field-input" rows={rows} />
      <FieldError className="field-error">{error}</FieldError>
    </TextField>
  );
}
