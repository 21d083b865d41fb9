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
      {hold.said && hold.said.note !== '' ? <p className="coverings-note">{hold.said.note}</p> : null}
      {hold.state === 'refused' ? <LackingList lacking={hold.lacking} /> : null}
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
  const when = formatInstant(said.at, zone, lang);
  return <p>{t(`hold.said.${state}`, { when, who: said.by?.name ?? t('common.nobody') })}</p>;
}
