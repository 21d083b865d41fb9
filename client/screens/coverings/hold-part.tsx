import { Link } from 'react-router';
import type { Standing } from '#domain/contract/hold';
import type { CoveringView } from '#domain/contract/views';
import { formatInstant } from '../../i18n/format.ts';
import { useWords } from '../../i18n/use-words.ts';
import { useHouse } from '../../shell/use-house.ts';
import { HoldReason, hasReason } from './hold-reason.tsx';
import { HoldWord } from './hold-word.tsx';
import { LackingList } from './lacking-list.tsx';
import { outrunWords } from './outrun-words.ts';

interface HoldPartProps {
  covering: CoveringView;
  standing: Standing;
}

/** The inspection of a covering: where it stands, by whom and when, and what is missing. */
export function HoldPart({ covering, standing }: HoldPartProps) {
  const { t } = useWords();
  const { id: house } = useHouse();
  const { hold, closed } = covering;
  const release = closed?.release ?? hold.release;
  return (
    <section className="section">
      <h2>{t('hold.title')}</h2>
      <p>
        <strong>
          <HoldWord phase={standing.phase} />
        </strong>
      </p>
      {hasReason(standing.phase) ? (
        <p>
          <HoldReason standing={standing} />
        </p>
      ) : null}
      <Said covering={covering} standing={standing} />
      {!closed && hold.said && hold.said.note !== '' ? (
        <p className="coverings-note">{t('hold.review.quoted', { note: hold.said.note })}</p>
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

function Said({ covering: { hold, closed }, standing }: HoldPartProps) {
  const { t, lang } = useWords();
  const { zone } = useHouse();
  const { state, said } = hold;
  if (state === 'planned' || said === null) return closed ? null : <p>{t('hold.said.planned')}</p>;
  const words = { when: formatInstant(said.at, zone, lang), who: said.by?.name ?? t('common.nobody') };
  if (standing.phase === 'outrun') return <p className="act-text">{outrunWords(t, lang, standing, words)}</p>;
  if (!closed) return <p>{t(`hold.said.${state}`, words)}</p>;
  // What is closed is neither ready nor refused any more; a release that came too late is told.
  return state === 'released' && said.at > closed.at ? <p>{t('hold.afterClosing', words)}</p> : null;
}
