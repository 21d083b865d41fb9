import type { ReactNode } from 'react';
import { Label, Radio, RadioGroup } from 'react-aria-components';

export interface RadioChoiceProps<V extends string> {
  label: string;
  value: V;
  onChange: (value: V) => void;
  choices: readonly { value: V; label: ReactNode }[];
  isDisabled?: boolean;
}

/** A few choices that exclude each other, all in sight. */
export function RadioChoice<V extends string>(props: RadioChoiceProps<V>) {
  return (
    <RadioGroup
      className="radio-choice"
      value={props.value}
      isDisabled={props.isDisabled ?? false}
      onChange={(value) => {
        const chosen = props.choices.find((choice) => choice.value === value);
        if (chosen) props.onChange(chosen.value);
      }}
    >
      <Label className="field-label">{props.label}</Label>
      <div className="radio-choice-row">
        {props.choices.map((choice) => (
          <Radio key={choice.value} value={choice.value} className="radio">
            {choice.label}
          </Radio>
        ))}
      </div>
    </RadioGroup>
  );
}
