import type { Stage, Track } from '#domain/frame/stage';
import { useWords } from '../i18n/use-words.ts';
import { StageStrokes } from './stage-strokes.tsx';

/** The strokes with the word beside them. */
export function StageName({ stage, track = null }: { stage: Stage | null; track?: Track | null }) {
  const { t } = useWords();
  return (
    <span className="stage-name">
      <StageStrokes stage={stage} track={track} isDecoration />
      <span>{stage === null ? t('common.stage.none') : t(`common.stage.${stage}`)}</span>
    </span>
  );
}
