import { Label, Radio, RadioGroup, Text } from 'react-aria-components';
import { TRACKS, STAGES, type Stage, type Track } from '#domain/frame/stage';
import { useWords } from '../i18n/use-words.ts';
import { StageStrokes } from './stage-strokes.tsx';

export interface StageChoiceProps {
  label: string;
  value: Stage | null;
  onChange: (stage: Stage) => void;
  /** Only the stages of this track are offered; null: all five. */
  track?: Track | null;
  isDisabled?: boolean;
}

/** Picks a stage by its strokes; each target is at least 44 px. */
export function StageChoice({ label, value, onChange, track = null, isDisabled = false }: StageChoiceProps) {
  const { t } = useWords();
  const offered: readonly Stage[] = track === null ? STAGES : TRACKS[track];
  return (
    <RadioGroup
      className="stage-choice"
      value={value}
      isDisabled={isDisabled}
      onChange={(next) => {
        const stage = offered.find((s) => s === next);
        if (stage) onChange(stage);
      }}
    >
      <Label className="field-label">{label}</Label>
      <div className="radio-choice-row">
        {offered.map((stage) => (
          <Radio key={stage} value={stage} className="stage-option">
            <StageStrokes stage={stage} track={track} isDecoration size="large" />
            <span>{t(`common.stage.${stage}`)}</span>
          </Radio>
        ))}
      </div>
      {offered.includes('pegged') ? (
        <Text slot="description" className="field-description">
          {t('common.peggedMeans')}
        </Text>
      ) : null}
    </RadioGroup>
  );
}
