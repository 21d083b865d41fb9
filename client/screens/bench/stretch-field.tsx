import type { ShownStretch } from '#domain/contract/frame-shapes';
import { useWords } from '../../i18n/use-words.ts';
import { Select } from '../../parts/select.tsx';

export interface StretchFieldProps {
  /** Labels of the lines that the member reaches. */
  lines: readonly string[];
  /** undefined: nobody has said anything. */
  value: ShownStretch | 'all' | undefined;
  guess: ShownStretch | null;
  onChange: (value: ShownStretch | 'all') => void;
}

const ALL = '';

/** Which part of a long member the region shows: from line to line, or all of it. */
export function StretchField({ lines, value, guess, onChange }: StretchFieldProps) {
  const { t } = useWords();
  const now = value ?? guess ?? 'all';
  const [from, to] = now === 'all' ? [ALL, ALL] : [now.from, now.to];
  const choices = [
    { value: ALL, label: t('bench.stretch.all') },
    ...lines.map((label) => ({ value: label, label })),
  ];
  const choose = (a: string, b: string) => {
    const other = (line: string) => lines.find((one) => one !== line) ?? line;
    if (a === ALL && b === ALL) onChange('all');
    else if (a === ALL || b === ALL) onChange(now === 'all' ? between(a || other(b), b || other(a)) : 'all');
    else onChange(between(a, b));
  };
  const between = (a: string, b: string): ShownStretch =>
    lines.indexOf(a) <= lines.indexOf(b) ? { from: a, to: b } : { from: b, to: a };
  return (
    <fieldset className="fieldset bench-stretch">
      <legend>{t('bench.stretch.title')}</legend>
      <div className="pair">
        <Select
          label={t('bench.stretch.from')}
          value={from}
          choices={choices}
          onChange={(label) => choose(label, to)}
        />
        <Select
          label={t('bench.stretch.to')}
          value={to}
          choices={choices}
          onChange={(label) => choose(from, label)}
        />
      </div>
      {now === 'all' && lines.length > 2 ? (
        <p>{t('bench.stretch.allHint', { from: lines[0], to: lines.at(-1) })}</p>
      ) : null}
      {value === undefined && guess ? <p className="soft">{t('bench.stretch.guessed')}</p> : null}
    </fieldset>
  );
}
