import { Fragment } from 'react';
import { Link } from 'react-router';
import type { BriefDayView } from '#domain/contract/journal-views';
import { useWords } from '../../i18n/use-words.ts';
import { StageStrokes } from '../../parts/stage-strokes.tsx';
import { useHouse } from '../../shell/use-house.ts';
import { asideWords, peopleWords } from './day-words.ts';
import { PhotoStrip } from './photo-strip.tsx';

/** One day near at hand: its photos, what they show by stage, what else was done, and by whom. */
export function BriefDay({ day }: { day: BriefDayView }) {
  const { t, lang } = useWords();
  const { id: house } = useHouse();
  const page = `/houses/${house}/days/${day.day}`;
  const rest = day.photos - day.pictures.length;
  const aside = asideWords(t, lang, day);
  const people = peopleWords(t, lang, day);
  return (
    <>
      {day.pictures.length > 0 ? <PhotoStrip photos={day.pictures} label={t('days.day.photos')} /> : null}
      {rest > 0 ? (
        <Link className="line-link" to={page}>
          {t('days.morePhotos', { count: rest })}
        </Link>
      ) : null}
      {day.shown.length > 0 ? (
        <ul className="plain-list shown">
          {day.shown.map((shown) => (
            <li key={shown.stage}>
              <StageStrokes stage={shown.stage} isDecoration size="large" />
              <Shown shown={shown} />
            </li>
          ))}
        </ul>
      ) : null}
      {aside.map((text) => (
        <p key={text}>{text}</p>
      ))}
      {people === '' ? null : <p className="soft">{people}</p>}
    </>
  );
}

const COMMA = { en: ',', ja: '、' } as const;

/** No line ends within a mark. */
function Shown({ shown: { stage, members, marks } }: { shown: BriefDayView['shown'][number] }) {
  const { t, lang } = useWords();
  const more = members - marks.length;
  return (
    <span>
      {marks.map((mark, i) => (
        <Fragment key={mark}>
          <span className="shown-mark">{i < marks.length - 1 ? `${mark}${COMMA[lang]}` : mark}</span>{' '}
        </Fragment>
      ))}
      {more > 0 ? `${t('coverings.andMore', { count: more })} ` : null}
      {t(`common.stage.${stage}`)}
    </span>
  );
}
