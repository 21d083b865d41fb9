import { Link } from 'react-router';
import type { CoveringView } from '#domain/contract/views';
import { formatInstant } from '../../i18n/format.ts';
import { useWords } from '../../i18n/use-words.ts';
import { useHouse } from '../../shell/use-house.ts';
import { HoldWord } from './hold-word.tsx';
import { LackingList } from './lacking-list.tsx';

/** The inspection of a covering: where it stands, by whom and when, and what is missing. */
export function HoldPart({ covering }: { covering: CoveringView }) {
  const { t } = useWords();
  const { id: house } = useHouse();
  const { hold, closed } = covering;
  const release = closed ? closed.release : hold.release;
  return (
    <section className="section">
      <h2>{t('hold.title')}</h2>
      <p>
        <strong>
          <HoldWord covering={covering} />
        </strong>
      </p>
      {closed && closed.release === null ? (
        <p>{closed.without === null ? t('hold.unsaid') : t('hold.without', { reason: closed.without })}</p>
      ) : null}
      <Said covering={covering} />
      {!closed && hold.said && hold.said.note !== '' ? (
        <p className="coverings-note">{hold.said.note}</p>
      ) : null}
      {!closed && hold.state === 'refused' ? <LackingList lacking={hold.lacking} /> : null}
      {release === null ? null : (
        <p>
          <Link className="alone" to={`/houses/${house}/releases/${release}`}>
            {t('hold.toRelease')}
          </Link>
        </p>
      )}
    </section>
  );
}

function Said({ covering: { hold, closed } }: { covering: CoveringView }) {
  const { t, lang } = useWords();
  const { zone } = useHouse();
  const { state, said } = hold;
  if (state === 'planned' || said === null) return closed ? null : <p>{t('hold.said.planned')}</p>;
  const words = { when: formatInstant(said.at, zone, lang), who: said.by?.name ?? t('common.nobody') };
  if (!closed) return <p>{t(`hold.said.${state}`, words)}</p>;
  // What is closed is neither ready nor refused any more; that its release was taken back since, it is told.
  const isTakenBack = closed.release !== null && hold.release !== closed.release;
  return isTakenBack ? (
    <p className="act-text">{t('hold.takenBack', { ...words, reason: said.note })}</p>
  ) : null;
}
