import {
  ComboBox,
  FieldError,
  Input,
  Label,
  ListBox,
  ListBoxItem,
  Popover,
  Text,
  Button,
} from 'react-aria-components';

export interface SearchChoice {
  id: string;
  label: string;
  /** A second line, e.g. the kind of a member. */
  hint?: string | undefined;
}

export interface SearchSelectProps {
  label: string;
  choices: readonly SearchChoice[];
  value: string | null;
  onChange: (id: string | null) => void;
  /** What has been typed; give it together with onInput to filter or accept free text yourself. */
  input?: string;
  onInput?: (text: string) => void;
  allowsOther?: boolean;
  description?: string | undefined;
  error?: string | null | undefined;
  /** What the button that opens the list is called. */
  openLabel: string;
  autoFocus?: boolean;
}

/** Type to narrow a long list, then pick. Give at most a few hundred choices at a time. */
export function SearchSelect(props: SearchSelectProps) {
  const typed = props.input === undefined ? {} : { inputValue: props.input };
  const typing = props.onInput ? { onInputChange: props.onInput, items: props.choices } : {};
  return (
    <ComboBox
      {...typed}
      {...typing}
      {...(props.onInput ? {} : { defaultItems: props.choices })}
      className="field"
      selectedKey={props.value}
      onSelectionChange={(key) => props.onChange(key === null ? null : String(key))}
      allowsCustomValue={props.allowsOther ?? false}
      allowsEmptyCollection={false}
      menuTrigger="input"
      validationBehavior="aria"
      isInvalid={Boolean(props.error)}
      autoFocus={props.autoFocus ?? false}
    >
      <Label className="field-label">{props.label}</Label>
      {props.description ? (
        <Text slot="description" className="field-description">
          {props.description}
        </Text>
      ) : null}
      <div className="search-select">
        <Input className="field-input" />
        <Button className="search-select-open" aria-label={props.openLabel}>
          <svg viewBox="0 0 12 12" aria-hidden="true">
            <path d="M2 4l4 4 4-4" />
          </svg>
        </Button>
      </div>
      <FieldError className="field-error">{props.error}</FieldError>
      <Popover className="popover">
        <ListBox<SearchChoice> className="list-box">
          {(choice) => (
            <ListBoxItem id={choice.id} textValue={choice.label} className="list-box-item">
              <span>{choice.label}</span>
              {choice.hint ? <span className="list-box-hint">{choice.hint}</span> : null}
            </ListBoxItem>
          )}
        </ListBox>
      </Popover>
    </ComboBox>
  );
}
