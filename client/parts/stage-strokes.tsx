import type { Stage, Track } from '#domain/frame/stage';
import { useWords } from '../i18n/use-words.ts';
import { STROKES, strokeStates } from './stage-glyph.ts';

export interface StageStrokesProps {
  /** The furthest stage on record; null: none. */
  stage: Stage | null;
  /** Pale strokes show what is still ahead on this track; null: all five. */
  track?: Track | null;
  /** Set where the stage stands beside it in words, so that it is not read twice. */
  isDecoration?: boolean;
  size?: 'small' | 'large';
}

/** 正, with a stroke for each stage passed. Reads without colour. */
export function StageStrokes({
  stage,
  track = null,
  isDecoration = false,
  size = 'small',
}: StageStrokesProps) {
  const { t } = useWords();
  const name = stage === null ? t('common.stage.none') : t(`common.stage.${stage}`);
  const naming = isDecoration
    ? { 'aria-hidden': true }
    : { role: 'img', 'aria-label': t('common.stageLabel', { stage: name }) };
  return (
    <svg className={`strokes strokes-${size}`} viewBox="0 0 24 24" {...naming}>
      {strokeStates(stage, track).map((state, i) =>
        state === 'outside' ? null : <path key={i} className={`stroke-${state}`} d={STROKES[i]} />,
      )}
    </svg>
  );
}
