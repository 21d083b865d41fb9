import { useWords } from '../../i18n/use-words.ts';
import { Field } from '../../parts/field.tsx';
import { RadioChoice } from '../../parts/radio-choice.tsx';
import { useHouse } from '../../shell/use-house.ts';
import { closingTime, whenFault, type When } from './closing-preview.ts';

export interface ClosingWhenProps {
  when: When;
  wasTried: boolean;
  /** Asked of something else than a closing: its words, and what is wrong with the time. */
  asked?: { readonly question: string; readonly fault: string | null };
  /** The time is known, and can only be corrected. */
  isKnown?: boolean;
  onChange: (when: When) => void;
}

/** Just now, or at a past time as the clock on site showed it. */
export function ClosingWhen({ when, wasTried, asked, isKnown = false, onChange }: ClosingWhenProps) {
  const { t } = useWords();
  const { zone } = useHouse();
  const fault = wasTried ? whenFault(when, new Date()) : null;
  const error = wasTried && asked ? asked.fault : fault && t(`coverings.close.${fault}`);
  const hour = when.is === 'earlier' ? when.time?.hour : undefined;
  return (
    <>
      {isKnown ? null : (
        <RadioChoice
          label={asked?.question ?? t('coverings.close.when')}
          value={when.is}
          choices={[
            { value: 'now', label: t('coverings.close.now') },
            { value: 'earlier', label: t('coverings.close.earlier') },
          ]}
          onChange={(is) => onChange(is === 'now' ? { is } : { is, text: '', time: null })}
        />
      )}
      {when.is === 'earlier' ? (
        <Field
          type="datetime-local"
          label={isKnown && asked ? asked.question : t('coverings.close.at', { zone })}
          value={when.text}
          error={error}
          onChange={(text) => onChange({ is: 'earlier', text, time: closingTime(text, zone) })}
        />
      ) : null}
      {hour === 'ambiguous' || hour === 'skipped' ? (
        <p role="status">{t(`coverings.close.${hour}`)}</p>
      ) : null}
    </>
  );
}
