import { STAGES } from '#domain/frame/stage';
import { kindLabel } from '../../i18n/kind-label.ts';
import { useLexicon } from '../../shell/use-lexicon.ts';
import { useWords } from '../../i18n/use-words.ts';
import { Select } from '../../parts/select.tsx';
import { RECORD_STATES, type FrameFilter } from './frame-filter.ts';
import type { FrameModel } from './frame-model.ts';

export interface FilterFieldsProps {
  readonly model: FrameModel;
  readonly value: FrameFilter;
  readonly onChange: (value: FrameFilter) => void;
}

/** Level, kind, stage and record: what does not fit is drawn pale. */
export function FilterFields({ model, value, onChange }: FilterFieldsProps) {
  const { t, lang } = useWords();
  const lexicon = useLexicon();
  const all = { value: '', label: t('frame.all') };
  const kinds = [...new Set([...model.members.values()].map(({ kind }) => kind))].filter(
    (kind) => kind !== '',
  );
  const stages = ['none', ...STAGES] as const;
  const levels = model.frame.grid?.levels ?? [];
  return (
    <details className="frame-filter no-print">
      <summary>{t('frame.narrow')}</summary>
      <div className="frame-filter-fields">
        {levels.length > 1 ? (
          <Select
            label={t('frame.level')}
            value={value.level}
            onChange={(level) => onChange({ ...value, level })}
            choices={[all, ...levels.map(({ label }) => ({ value: label, label }))]}
          />
        ) : null}
        <Select
          label={t('frame.kind')}
          value={value.kind}
          onChange={(kind) => onChange({ ...value, kind })}
          choices={[all, ...kinds.map((kind) => ({ value: kind, label: kindLabel(kind, lang, lexicon) }))]}
        />
        <Select
          label={t('frame.stage')}
          value={value.stage}
          onChange={(stage) => onChange({ ...value, stage })}
          choices={[
            { value: '' as const, label: t('frame.all') },
            ...stages.map((stage) => ({ value: stage, label: t(`common.stage.${stage}`) })),
          ]}
        />
        <Select
          label={t('frame.record')}
          value={value.state}
          onChange={(state) => onChange({ ...value, state })}
          choices={[
            { value: '' as const, label: t('frame.all') },
            ...RECORD_STATES.map((state) => ({ value: state, label: t(`frame.recordOf.${state}`) })),
          ]}
        />
      </div>
    </details>
  );
}
