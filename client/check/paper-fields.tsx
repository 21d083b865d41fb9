import { useId } from 'react';
import type { Words } from '../i18n/words.ts';
import type { Written } from './written-on-paper.ts';

export interface PaperFieldsProps {
  t: Words;
  written: Written;
  isUnusable: boolean;
  /** What came with a code stands above; it need not be typed. */
  isFromCode: boolean;
  onChange: (written: Written) => void;
}

/** What was noted elsewhere, to hold the archive against. */
export function PaperFields({ t, written, isUnusable, isFromCode, onChange }: PaperFieldsProps) {
  const id = useId();
  const problem = isUnusable ? `${id}-problem` : undefined;
  return (
    <details
      className="disclosure"
      open={isUnusable || (!isFromCode && Object.values(written).some((text) => text !== ''))}
    >
      <summary>{t('check.paper.title')}</summary>
      <p>{t('check.paper.lead')}</p>
      {(['size', 'head', 'release'] as const).map((name) => (
        <div className="field" key={name}>
          <label className="field-label" htmlFor={`${id}-${name}`}>
            {t(`check.paper.${name}`)}
          </label>
          <input
            className="field-input"
            id={`${id}-${name}`}
            inputMode={name === 'size' ? 'numeric' : 'text'}
            autoComplete="off"
            spellCheck={false}
            value={written[name]}
            aria-invalid={isUnusable && name !== 'release'}
            aria-describedby={problem}
            onChange={({ target }) => onChange({ ...written, [name]: target.value })}
          />
        </div>
      ))}
      {problem ? (
        <p className="field-error" id={problem}>
          {t('check.paper.unusable')}
        </p>
      ) : null}
    </details>
  );
}
