import { memo } from 'react';
import type { CoveringKind } from '#domain/contract/shapes';
import type { MemberView } from '#domain/contract/views';
import { kindLabel } from '../../i18n/kind-label.ts';
import { useLexicon } from '../../shell/use-lexicon.ts';
import { useWords } from '../../i18n/use-words.ts';
import { Checkbox } from '../../parts/checkbox.tsx';
import { Select } from '../../parts/select.tsx';
import { StageStrokes } from '../../parts/stage-strokes.tsx';
import { joinWords } from '../../i18n/join-words.ts';
import { offeredStages, type CoveringEvent, type Least } from './covering-draft.ts';

export interface HidesRowProps {
  member: MemberView;
  kind: CoveringKind;
  least: Least | undefined;
  tell: (event: CoveringEvent) => void;
  asksStage: boolean;
}

/** A member that may disappear behind the covering. Drawn anew only when its own tick or stage changes. */
export const HidesRow = memo(function HidesRow({ member, kind, least, tell, asksStage }: HidesRowProps) {
  const { t, lang } = useWords();
  const lexicon = useLexicon();
  const { mark, place, track } = member;
  const words = joinWords([kindLabel(member.kind, lang, lexicon), member.name, place], lang);
  return (
    <li className="coverings-member">
      <Checkbox
        isSelected={least !== undefined}
        onChange={(isOn) =>
          tell(isOn ? { type: 'tick', members: [member] } : { type: 'untick', marks: [mark] })
        }
      >
        <strong>{mark}</strong> <span className="soft">{words}</span>
      </Checkbox>
      {least && asksStage ? (
        <div className="coverings-least">
          <StageStrokes stage={least.stage} track={track} isDecoration />
          <Select
            hideLabel
            label={t('coverings.form.leastFor', { mark })}
            value={least.stage}
            choices={offeredStages(kind, track).map((stage) => ({
              value: stage,
              label: t(`common.stage.${stage}`),
            }))}
            onChange={(stage) => tell({ type: 'choose-least', mark, stage })}
          />
        </div>
      ) : null}
    </li>
  );
});
