import { memo } from 'react';
import { Link } from 'react-router';
import type { FrameMemberView } from '#domain/contract/frame-views';
import { hiddenOn, stageOn } from '#domain/frame/drawing/state-on';
import { useWords } from '../../i18n/use-words.ts';
import { KindName } from '../../parts/kind-name.tsx';
import { isToldAlike, sheetedOn, type FrameModel } from './frame-model.ts';
import { hiddenWords } from './hidden-words.ts';
import { SheetedWords } from './sheeted-words.tsx';

export interface MemberRowProps {
  readonly model: FrameModel;
  readonly member: FrameMemberView;
  readonly house: string;
  readonly day: string;
  readonly isChosen: boolean;
  readonly hasReading: boolean;
  readonly onChoose: (mark: string) => void;
  readonly onTake?: (mark: string) => void;
}

/** One member in words. Drawn anew only where a day or a tag changes something about it: rows can be thousands. */
export const MemberRow = memo(Row, (before, now) => {
  const { day: _before, model: _of, ...rest } = before;
  void [_before, _of];
  return (
    Object.entries(rest).every(([key, value]) => now[key as keyof typeof rest] === value) &&
    isToldAlike(before.model, now.model, now.member.mark) &&
    (before.day === now.day || standing(before) === standing(now))
  );
});

/** All of what a row says that depends on the day. */
function standing({ model, member, day }: MemberRowProps): string {
  const hides = model.hides.get(member.mark) ?? [];
  return [
    stageOn(member, day),
    ...hides.map(({ hidden }) => hiddenOn(hidden, day)),
    ...sheetedOn(model, member.mark, day).map(({ protection }) => protection.id),
  ].join();
}

function Row({ member, hasReading, model, house, day, isChosen, onChoose, onTake }: MemberRowProps) {
  const { t, lang } = useWords();
  const { mark } = member;
  const missing = (model.hides.get(mark) ?? []).filter(({ hidden }) =>
    ['gap', 'lost'].includes(hiddenOn(hidden, day)),
  );
  const tell = () => onChoose(mark);
  return (
    <li className={isChosen ? 'frame-tree-row frame-tree-chosen' : 'frame-tree-row'} onPointerEnter={tell}>
      {onTake ? (
        <button type="button" className="button button-quiet" onFocus={tell} onClick={() => onTake(mark)}>
          {mark}
        </button>
      ) : (
        <Link className="alone" to={`/houses/${house}/members/${encodeURIComponent(mark)}`} onFocus={tell}>
          {mark}
        </Link>
      )}{' '}
      <span>
        <KindName kind={member.kind} hasReading={hasReading} />{' '}
        <span className="soft">{t(`common.stage.${stageOn(member, day) ?? 'none'}`)}</span>
      </span>
      {missing.map((one) => (
        <span key={one.covering.id} className="act-text frame-tree-missing">
          {hiddenWords(t, lang, model, one, day)}
        </span>
      ))}
      <SheetedWords {...{ model, mark, day }} />
    </li>
  );
}
