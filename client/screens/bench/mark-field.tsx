import { useId, useState, type KeyboardEvent } from 'react';
import type { MemberView } from '#domain/contract/views';
import { kindLabel } from '../../i18n/kind-label.ts';
import { useLexicon } from '../../shell/use-lexicon.ts';
import { useWords } from '../../i18n/use-words.ts';
import { joinWords } from '../../i18n/join-words.ts';
import { offeredFor, type MemberIndex } from '../../finding/member-index.ts';

export interface MarkFieldProps {
  value: string;
  index: MemberIndex;
  /** Said below the hint, e.g. that what stands here is only a suggestion. */
  remark: string;
  error: string | null;
  onWrite: (mark: string) => void;
  /** One of the list was pressed. */
  onChoose: (mark: string) => void;
  /** Enter: with the mark that was picked from the list, or with what stands in the field. */
  onEnter: (mark: string) => void;
  /** Arrow up, while no list is open: the words of the last tag. */
  onAsLast: () => void;
}

/** A frame has about a dozen lines: a number typed shows all posts of that number. */
const OFFERED = 12;

/**
 * Type part of a member, pick with the arrows, Enter. After the combobox pattern of the ARIA Authoring
 * Practices 1.2; what is offered stays in the page, so that nothing covers the picture on a phone.
 */
export function MarkField(props: MarkFieldProps) {
  const { value, index, remark, error, onWrite, onChoose, onEnter, onAsLast } = props;
  const { t } = useWords();
  const id = useId();
  const [at, setAt] = useState(-1);
  const [isOpen, setIsOpen] = useState(false);
  const offered = isOpen ? offeredFor(index, value).slice(0, OFFERED) : [];
  const write = (mark: string, open: boolean) => {
    onWrite(mark);
    setAt(-1);
    setIsOpen(open);
  };
  const onKeyDown = (event: KeyboardEvent) => {
    if (event.nativeEvent.isComposing) return;
    const step = { ArrowDown: 1, ArrowUp: -1 }[event.key];
    if (event.key === 'ArrowUp' && !isOpen) {
      event.preventDefault();
      onAsLast();
    } else if (step !== undefined) {
      event.preventDefault();
      setIsOpen(true);
      setAt(Math.min(Math.max(-1, at + step), OFFERED - 1));
    } else if (event.key === 'Escape' && isOpen) {
      event.preventDefault();
      setIsOpen(false);
      setAt(-1);
    } else if (event.key === 'Enter') {
      event.preventDefault();
      onEnter(offered[at]?.mark ?? value);
      setIsOpen(false);
    }
  };
  return (
    <div className="field mark-field">
      <label className="field-label" htmlFor={id}>
        {t('bench.form.mark')}
      </label>
      <span id={`${id}-d`} className="field-description">
        {t('bench.form.markHint')} {remark}
      </span>
      <input
        id={id}
        className="field-input"
        role="combobox"
        autoComplete="off"
        autoCapitalize="off"
        spellCheck={false}
        maxLength={400}
        aria-autocomplete="list"
        aria-expanded={offered.length > 0}
        aria-controls={`${id}-l`}
        aria-describedby={`${id}-d ${id}-e`}
        aria-activedescendant={offered[at] ? `${id}-${at}` : undefined}
        aria-invalid={error !== null || undefined}
        value={value}
        onChange={({ target }) => write(target.value, true)}
        onKeyDown={onKeyDown}
        // What stands there is only proposed, or was said: typing replaces it.
        onFocus={({ target }) => target.select()}
        onBlur={() => afterPress(() => setIsOpen(false))}
      />
      <ul id={`${id}-l`} role="listbox" className="mark-list" aria-label={t('bench.form.suggestions')}>
        {offered.map((member, i) => (
          <Suggestion
            key={member.mark}
            id={`${id}-${i}`}
            member={member}
            isActive={i === at}
            onPick={() => {
              setIsOpen(false);
              onChoose(member.mark);
            }}
          />
        ))}
      </ul>
      <span id={`${id}-e`} className="field-error" role="alert">
        {error}
      </span>
    </div>
  );
}

const PRESS_MS = 300;

/**
 * The press that took the focus away must end where it began: were the list to close under it, what lies below
 * would move away from the hand.
 */
function afterPress(close: () => void): void {
  const done = () => {
    clearTimeout(timer);
    document.removeEventListener('pointerup', done);
    setTimeout(close);
  };
  const timer = setTimeout(done, PRESS_MS);
  document.addEventListener('pointerup', done);
}

interface SuggestionProps {
  id: string;
  member: MemberView;
  isActive: boolean;
  onPick: () => void;
}

function Suggestion({ id, member, isActive, onPick }: SuggestionProps) {
  const { lang } = useWords();
  const lexicon = useLexicon();
  const rest = joinWords([kindLabel(member.kind, lang, lexicon), member.name, member.place], lang);
  return (
    <li
      id={id}
      role="option"
      aria-selected={isActive}
      // Before the field loses its focus, which closes the list.
      onPointerDown={(event) => event.preventDefault()}
      onClick={onPick}
    >
      <strong>{member.mark}</strong> <span className="soft">{rest}</span>
    </li>
  );
}
