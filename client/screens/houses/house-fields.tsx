import type { ReactNode } from 'react';
import { useWords } from '../../i18n/use-words.ts';
import { Field } from '../../parts/field.tsx';
import type { HouseDraft, HouseDraftProblem } from './house-draft.ts';
import { ZoneField } from './zone-field.tsx';

export interface HouseFieldsProps {
  draft: HouseDraft;
  onChange: (draft: HouseDraft) => void;
  wrong: readonly HouseDraftProblem[];
  /** Beside the position: where it could be taken from, what follows from taking it away. */
  besideSite?: ReactNode;
}

export function HouseFields({ draft, onChange, wrong, besideSite }: HouseFieldsProps) {
  const { t } = useWords();
  const problem = (field: Exclude<HouseDraftProblem, 'radius'>) =>
    wrong.includes(field) ? t(`houses.missing.${field}`) : null;
  return (
    <>
      <Field
        label={t('houses.fields.name')}
        description={t('houses.fields.nameHint')}
        name="house-name"
        autoComplete="off"
        maxLength={200}
        value={draft.name}
        onChange={(name) => onChange({ ...draft, name })}
        error={problem('name')}
      />
      <ZoneField
        value={draft.zone}
        onChange={(zone) => onChange({ ...draft, zone })}
        error={problem('zone')}
      />
      <Field
        label={t('houses.fields.firstDay')}
        description={t('houses.fields.firstDayHint')}
        type="date"
        value={draft.firstDay}
        onChange={(firstDay) => onChange({ ...draft, firstDay })}
      />
      <Field
        label={t('houses.fields.site')}
        description={t('houses.fields.siteHint')}
        autoComplete="off"
        value={draft.site}
        onChange={(site) => onChange({ ...draft, site })}
        error={problem('site')}
      />
      {besideSite}
      {draft.site.trim() === '' ? null : (
        <Field
          label={t('place.settings.radius')}
          description={t('place.settings.radiusHint')}
          autoComplete="off"
          inputMode="decimal"
          value={draft.radius}
          onChange={(radius) => onChange({ ...draft, radius })}
          error={wrong.includes('radius') ? t('place.settings.radiusWrong') : null}
        />
      )}
    </>
  );
}
