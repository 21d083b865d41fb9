import { useId } from 'react';

export interface ProgressProps {
  label: string;
  /** How much is done of `total`; null while nobody knows. */
  value: number | null;
  total: number;
  /** In words, e.g. "3 of 12 photos". */
  text: string;
}

export function Progress({ label, value, total, text }: ProgressProps) {
  const id = useId();
  return (
    <div className="progress">
      <label htmlFor={id}>{label}</label>
      <progress
        id={id}
        max={Math.max(total, 1)}
        {...(value === null ? {} : { value })}
        aria-valuetext={text}
      />
      <span className="progress-text">{text}</span>
    </div>
  );
}
