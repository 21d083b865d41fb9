import { useState } from 'react';
import { useWords } from '../../i18n/use-words.ts';
import { Button } from '../../parts/button.tsx';
import { Field } from '../../parts/field.tsx';
import { Select } from '../../parts/select.tsx';
import { SERIES, labelsOf, type FamilyDraft, type Series } from './grid-draft.ts';

export interface FamilyFieldsProps<Runs extends string> {
  family: 'first' | 'second';
  draft: FamilyDraft<Runs>;
  runs: readonly Runs[];
  onChange: (draft: FamilyDraft<Runs>) => void;
  /** What is wrong with it, at the field that has to be typed anew. */
  wrong: { readonly field: 'labels' | 'bays'; readonly text: string } | null;
}

/** Lines of one family: labels, bays, and which way they run on the plan. */
export function FamilyFields<Runs extends 'rightward' | 'leftward' | 'upward' | 'downward'>({
  family,
  draft,
  runs,
  onChange,
  wrong,
}: FamilyFieldsProps<Runs>) {
  const { t } = useWords();
  const [series, setSeries] = useState<Series>(family === 'first' ? 'iroha' : 'kanji');
  const [count, setCount] = useState('');
  const wanted = Number(count.normalize('NFKC'));
  const errorAt = (field: 'labels' | 'bays') => (wrong?.field === field ? wrong.text : null);
  const canFill = Number.isInteger(wanted) && wanted >= 1 && wanted <= 47;
  return (
    <fieldset className="fieldset form">
      <legend>{t(`grid.${family}.title`)}</legend>
      <p className="soft">{t(`grid.${family}.hint`)}</p>
      <Field
        label={t('grid.labels')}
        description={t('grid.labelsHint')}
        autoComplete="off"
        maxLength={2000}
        value={draft.labels}
        onChange={(labels) => onChange({ ...draft, labels })}
        error={errorAt('labels')}
      />
      <div className="pair">
        <Select
          label={t('grid.series')}
          value={series}
          choices={SERIES.map((value) => ({ value, label: t(`grid.seriesOf.${value}`) }))}
          onChange={setSeries}
        />
        <Field label={t('grid.count')} inputMode="numeric" maxLength={3} value={count} onChange={setCount} />
        <Button
          isDisabled={!canFill}
          onPress={() => onChange({ ...draft, labels: labelsOf(series, wanted) })}
        >
          {t('grid.fill')}
        </Button>
      </div>
      <Field
        label={t('grid.bays')}
        description={t('grid.baysHint')}
        autoComplete="off"
        maxLength={4000}
        value={draft.bays}
        onChange={(bays) => onChange({ ...draft, bays })}
        error={errorAt('bays')}
      />
      <Select
        label={t('grid.runs')}
        value={draft.runs}
        choices={runs.map((value) => ({ value, label: t(`grid.runsOf.${value}`) }))}
        onChange={(value) => onChange({ ...draft, runs: value })}
      />
    </fieldset>
  );
}
