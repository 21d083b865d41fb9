import {
  FieldError,
  Input,
  Label,
  Text,
  TextField,
  type InputProps,
  type TextFieldProps,
} from 'react-aria-components';

export interface FieldProps extends Omit<TextFieldProps, 'className' | 'style' | 'children' | 'isInvalid'> {
  label: string;
  description?: string | undefined;
  /** A sentence; its presence marks the field as wrong. */
  error?: string | null | undefined;
  list?: InputProps['list'];
  step?: InputProps['step'];
}

/** One line of input with its label, an optional explanation and an optional error, all tied together. */
export function Field({ label, description, error, list, step, ...rest }: FieldProps) {
  return (
    <TextField {...rest} validationBehavior="aria" isInvalid={Boolean(error)} className="field">
      <Label className="field-label">{label}</Label>
      {description ? (
        <Text slot="description" className="field-description">
          {description}
        </Text>
      ) : null}
      <Input className="field-input" {...(list ? { list } : {})} {...(step ? { step } : {})} />
      <FieldError className="field-error">{error}</FieldError>
    </TextField>
  );
}
