import { useQuery } from '@tanstack/react-query';
import { STAGES } from '#domain/frame/stage';
import { call } from '../../api/call.ts';
import { keys } from '../../api/keys.ts';
import { formatDay } from '../../i18n/format.ts';
import { useWords } from '../../i18n/use-words.ts';
import { Checkbox } from '../../parts/checkbox.tsx';
import { Select, type Choice } from '../../parts/select.tsx';
import { MemberPicker } from './member-picker.tsx';
import { without, type FilterProps } from './photo-filter.ts';
import { useAdders } from './use-adders.ts';

/** Narrows the list by day, by what the tags say, by who added the photos; all of it together. */
export function FilterControls({ house, filter, onChange }: FilterProps) {
  const { t } = useWords();
  const set = (key: 'day' | 'stage' | 'by', value: string) =>
    onChange(value === '' ? without(filter, key) : { ...filter, [key]: value });
  const stages = STAGES.map((value) => ({ value, label: t(`common.stage.${value}`) }));
  const people = useAdders(house, true).map(({ id, name }) => ({ value: id, label: name }));
  return (
    <div className="photos-controls">
      <Select
        label={t('photos.filter.day')}
        value={filter.day ?? ''}
        choices={withAll(useDayChoices(house, filter.day), t('photos.filter.everyDay'))}
        onChange={(day) => set('day', day)}
      />
      <MemberPicker house={house} onPick={(mark) => onChange({ ...filter, mark })} />
      <Select
        label={t('photos.filter.stage')}
        value={filter.stage ?? ''}
        choices={withAll(stages, t('photos.filter.anyStage'))}
        onChange={(stage) => set('stage', stage)}
      />
      <Select
        label={t('photos.filter.by')}
        value={filter.by ?? ''}
        choices={withAll(people, t('photos.filter.anyone'))}
        onChange={(by) => set('by', by)}
      />
      <Checkbox
        isSelected={filter.untagged === '1'}
        onChange={(isOn) => onChange(isOn ? { ...filter, untagged: '1' } : without(filter, 'untagged'))}
      >
        {t('photos.filter.untagged')}
      </Checkbox>
    </div>
  );
}

const withAll = (choices: readonly Choice<string>[], all: string) => [{ value: '', label: all }, ...choices];

/** The days that have photos, and the one that is asked for even where it has none. */
function useDayChoices(house: string, asked: string | undefined): Choice<string>[] {
  const { lang } = useWords();
  const query = useQuery({
    queryKey: keys.photos(house, { as: 'counts' }),
    queryFn: ({ signal }) => call('countPhotos', { params: { house }, query: {}, signal }),
  });
  const days = (query.data?.days ?? []).map(({ day }) => day);
  const listed = asked !== undefined && !days.includes(asked) ? [asked, ...days] : days;
  return listed.map((day) => ({ value: day, label: formatDay(day, lang) }));
}
