import { useId } from 'react';
import { daysBetween } from '#domain/record/days-between';
import { formatDay } from '../../i18n/format.ts';
import { useWords } from '../../i18n/use-words.ts';
import { Button } from '../../parts/button.tsx';
import { dayAfter, nextChange } from './day-steps.ts';

export interface DaySliderProps {
  readonly days: readonly string[];
  readonly today: string;
  readonly day: string;
  readonly onChange: (day: string) => void;
}

/** From the day of the first photo to today; the buttons go from change to change. */
export function DaySlider({ days, today, day, onChange }: DaySliderProps) {
  const { t, lang } = useWords();
  const id = useId();
  const first = days[0] ?? today;
  const said = day === today ? t('frame.today', { day: formatDay(day, lang) }) : formatDay(day, lang);
  const step = (way: 1 | -1) => nextChange(days, today, day, way);
  const button = (way: 1 | -1) => {
    const to = step(way);
    return (
      <Button
        aria-label={way > 0 ? t('frame.dayAfter') : t('frame.dayBefore')}
        isDisabled={to === null}
        onPress={() => {
          if (to !== null) onChange(to);
        }}
      >
        <svg className="frame-sign" viewBox="0 0 24 24" aria-hidden="true">
          <path d={way > 0 ? 'M8 5l8 7-8 7' : 'M16 5l-8 7 8 7'} />
        </svg>
      </Button>
    );
  };
  if (days.length === 0) return <p className="soft">{t('frame.neverSeen')}</p>;
  return (
    <div className="frame-day no-print">
      <label htmlFor={id} className="field-label">
        {t('frame.day')}
      </label>
      <output htmlFor={id} className="frame-day-said">
        {said}
      </output>
      <div className="frame-day-row">
        {button(-1)}
        <input
          id={id}
          type="range"
          min={0}
          max={daysBetween(first, today)}
          value={daysBetween(first, day)}
          aria-valuetext={said}
          onChange={({ target }) => onChange(dayAfter(first, Number(target.value)))}
        />
        {button(1)}
      </div>
    </div>
  );
}
