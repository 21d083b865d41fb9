import { useId, useState } from 'react';
import { useQuery } from '@tanstack/react-query';
import { parseMark } from '#domain/frame/mark';
import { call } from '../../api/call.ts';
import { keys } from '../../api/keys.ts';
import { formatDay } from '../../i18n/format.ts';
import { useWords } from '../../i18n/use-words.ts';
import { Button } from '../../parts/button.tsx';
import { Checkbox } from '../../parts/checkbox.tsx';
import { Field } from '../../parts/field.tsx';
import { Select } from '../../parts/select.tsx';
import { useMembers } from '../../finding/use-members.ts';
import { isFiltered, type PhotoFilter } from './photo-filter.ts';

export interface FilterBarProps {
  house: string;
  filter: PhotoFilter;
  onChange: (filter: PhotoFilter) => void;
}

/** Narrows the list by day, by member, or to what nobody has tagged yet. */
export function FilterBar({ house, filter, onChange }: FilterBarProps) {
  const { t } = useWords();
  return (
    <section className="photos-filter" aria-label={t('photos.filter.title')}>
      <DayFilter house={house} filter={filter} onChange={onChange} />
      <MarkFilter house={house} filter={filter} onChange={onChange} />
      <Checkbox
        isSelected={filter.untagged === '1'}
        onChange={(isOn) =>
          onChange(isOn ? { ...without(filter, 'untagged'), untagged: '1' } : without(filter, 'untagged'))
        }
      >
        {t('photos.filter.untagged')}
      </Checkbox>
      {isFiltered(filter) ? (
        <Button look="quiet" onPress={() => onChange({})}>
          {t('photos.filter.all')}
        </Button>
      ) : null}
    </section>
  );
}

function without(filter: PhotoFilter, key: keyof PhotoFilter): PhotoFilter {
  return Object.fromEntries(Object.entries(filter).filter(([name]) => name !== key));
}

function DayFilter({ house, filter, onChange }: FilterBarProps) {
  const { t, lang } = useWords();
  const query = useQuery({
    queryKey: keys.days(house),
    queryFn: ({ signal }) => call('listDays', { params: { house }, signal }),
  });
  const days = (query.data?.days ?? []).filter(({ photos }) => photos > 0).map(({ day }) => day);
  const listed = filter.day !== undefined && !days.includes(filter.day) ? [filter.day, ...days] : days;
  const choices = listed.map((day) => ({ value: day, label: formatDay(day, lang) }));
  return (
    <Select
      label={t('photos.filter.day')}
      value={filter.day ?? ''}
      choices={[{ value: '', label: t('photos.filter.everyDay') }, ...choices]}
      onChange={(day) => onChange(day === '' ? without(filter, 'day') : { ...filter, day })}
    />
  );
}

function MarkFilter({ house, filter, onChange }: FilterBarProps) {
  const { t } = useWords();
  const list = useId();
  const [text, setText] = useState(filter.mark ?? '');
  const { index } = useMembers(house);
  const apply = (value: string) => {
    const parsed = parseMark(value);
    onChange(parsed.ok ? { ...filter, mark: parsed.mark } : without(filter, 'mark'));
  };
  return (
    <form
      className="photos-filter-mark"
      onSubmit={(event) => {
        event.preventDefault();
        apply(text);
      }}
    >
      <Field label={t('photos.filter.mark')} list={list} value={text} onChange={setText} autoComplete="off" />
      <datalist id={list}>
        {index.entries.map(({ member: { mark } }) => (
          <option key={mark} value={mark} />
        ))}
      </datalist>
      <Button type="submit">{t('photos.filter.apply')}</Button>
    </form>
  );
}
