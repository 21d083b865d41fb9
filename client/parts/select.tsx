import { useId, type ReactNode } from 'react';

export interface Choice<V extends string> {
  value: V;
  label: string;
}

export interface SelectProps<V extends string> {
  label: string;
  value: V;
  onChange: (value: V) => void;
  choices: readonly Choice<V>[];
  description?: string | undefined;
  error?: string | null | undefined;
  isDisabled?: boolean;
  /** The label is read out but not drawn, e.g. where a table heading already says it. */
  hideLabel?: boolean;
  name?: string;
}

/** The system's own list: on a phone, with gloves, nothing drawn by hand is as good. */
export function Select<V extends string>(props: SelectProps<V>) {
  const id = useId();
  const notes = [props.description ? `${id}-d` : '', props.error ? `${id}-e` : ''].join(' ').trim();
  return (
    <div className="field">
      <label className={props.hideLabel ? 'out-of-sight' : 'field-label'} htmlFor={id}>
        {props.label}
      </label>
      <SelectNote id={`${id}-d`} kind="description" text={props.description} />
      <select
        id={id}
        className="field-input"
        name={props.name}
        value={props.value}
        disabled={props.isDisabled}
        aria-invalid={props.error ? true : undefined}
        aria-describedby={notes || undefined}
        onChange={(event) => {
          const chosen = props.choices.find((choice) => choice.value === event.target.value);
          if (chosen) props.onChange(chosen.value);
        }}
      >
        {props.choices.map((choice): ReactNode => (
          <option key={choice.value} value={choice.value}>
            {choice.label}
          </option>
        ))}
      </select>
      <SelectNote id={`${id}-e`} kind="error" text={props.error} />
    </div>
  );
}

function SelectNote(props: { id: string; kind: 'description' | 'error'; text: string | null | undefined }) {
  if (!props.text) return null;
  return (
    <span id={props.id} className={`field-${props.kind}`}>
      {props.text}
    </span>
  );
}
