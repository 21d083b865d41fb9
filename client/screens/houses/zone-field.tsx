import { useState } from 'react';
import { useWords } from '../../i18n/use-words.ts';
import { SearchSelect } from '../../parts/search-select.tsx';
import { allZones, narrowZones } from './zones.ts';

export interface ZoneFieldProps {
  value: string | null;
  onChange: (zone: string | null) => void;
  error: string | null;
}

export function ZoneField({ value, onChange, error }: ZoneFieldProps) {
  const { t } = useWords();
  const [typed, setTyped] = useState(value ?? '');
  const zones = allZones(value);
  return (
    <SearchSelect
      label={t('houses.fields.zone')}
      description={t('houses.fields.zoneHint')}
      openLabel={t('common.showList')}
      // The whole list while the chosen zone stands there unaltered: else nobody could look for another.
      choices={narrowZones(zones, typed === value ? '' : typed)}
      value={value}
      onChange={(zone) => {
        onChange(zone);
        if (zone !== null) setTyped(zone);
      }}
      input={typed}
      onInput={setTyped}
      error={error}
    />
  );
}
