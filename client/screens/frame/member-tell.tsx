import { Link } from 'react-router';
import { hiddenOn, stageOn } from '#domain/frame/drawing/state-on';
import { trackOf } from '#domain/lexicon/track-of-kind';
import { joinWords } from '../../i18n/join-words.ts';
import { useWords } from '../../i18n/use-words.ts';
import { KindName } from '../../parts/kind-name.tsx';
import { StageStrokes } from '../../parts/stage-strokes.tsx';
import { sheetedOn, type FrameModel } from './frame-model.ts';
import { hiddenWords } from './hidden-words.ts';
import { SheetedWords } from './sheeted-words.tsx';

export interface MemberTellProps {
  readonly model: FrameModel;
  readonly house: string;
  readonly mark: string | null;
  readonly day: string;
}

/** What is known of the member that is pointed at. The place for it stays, so that nothing moves under the hand. */
export function MemberTell({ model, house, mark, day }: MemberTellProps) {
  const { t, lang } = useWords();
  const member = mark === null ? undefined : model.members.get(mark);
  if (!member) return <p className="frame-tell soft no-print">{t('frame.tell.none')}</p>;
  const stage = stageOn(member, day);
  const hides = model.hides.get(member.mark) ?? [];
  return (
    <div className="frame-tell no-print">
      <p className="frame-tell-head">
        <strong>{member.mark}</strong> <KindName kind={member.kind} />
        <span className="soft">{joinWords([member.name, member.place], lang)}</span>
        <span className="stage-name">
          <StageStrokes stage={stage} track={trackOf(null, member.kind)} isDecoration />
          {t(`common.stage.${stage ?? 'none'}`)}
        </span>
        <Link className="alone" to={`/houses/${house}/members/${encodeURIComponent(member.mark)}`}>
          {t('frame.tell.open', { mark: member.mark })}
        </Link>
      </p>
      <ul className="plain-list">
        {hides.length === 0 ? <li className="soft">{t('frame.tell.notHidden')}</li> : null}
        {hides.map((one) => {
          const state = hiddenOn(one.hidden, day);
          return (
            <li
              key={one.covering.id}
              className={state === 'gap' || state === 'lost' ? 'act-text' : undefined}
            >
              {hiddenWords(t, lang, model, one, day)}
            </li>
          );
        })}
        {sheetedOn(model, member.mark, day).length > 0 ? (
          <li>
            <SheetedWords {...{ model, mark: member.mark, day }} />
          </li>
        ) : null}
      </ul>
    </div>
  );
}
