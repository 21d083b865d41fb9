import type { GuestCoveringView } from '#domain/contract/guests';
import { formatInstant, formatList } from '../../i18n/format.ts';
import { joinWords } from '../../i18n/join-words.ts';
import { stretchWords } from '../../i18n/stretch-words.ts';
import { useWords } from '../../i18n/use-words.ts';
import { KindName } from '../../parts/kind-name.tsx';
import { closingWords } from './closing-words.ts';
import { GuestPictures } from './guest-pictures.tsx';

export interface GuestCoveringProps {
  secret: string;
  house: string;
  zone: string;
  covering: GuestCoveringView;
}

export function GuestCovering({ secret, house, zone, covering }: GuestCoveringProps) {
  const { t, lang } = useWords();
  const { kind, counts, lines } = covering;
  const counted = { onRecord: counts.onRecord, count: counts.hidden };
  const waived = counts.waived > 0 ? t('guest.waived', { count: counts.waived }) : '';
  return (
    <>
      <dl className="facts">
        <dt>{t('guest.house')}</dt>
        <dd>{house}</dd>
        <dt>{t('guest.kind')}</dt>
        <dd>{t(`common.coveringKind.${kind}`)}</dd>
        <dt>{t('guest.closing')}</dt>
        <dd>{closingWords(t, lang, zone, covering)}</dd>
        <dt>{t('hold.title')}</dt>
        <dd>
          <GuestStanding standing={covering.standing} zone={zone} />
        </dd>
      </dl>
      <section className="section">
        <h2>{t('guest.hides')}</h2>
        {lines.length === 0 ? (
          <p>{t('guest.hidesNothing')}</p>
        ) : (
          <p>{joinWords([t('guest.counts', counted), waived], lang)}</p>
        )}
        <ul className="guest-lines plain-list">
          {lines.map((line) => (
            <li key={line.mark}>
              <GuestLine secret={secret} zone={zone} line={line} />
            </li>
          ))}
        </ul>
      </section>
    </>
  );
}

/** Where it stands, with the reasons; a guest learns nobody's name. */
function GuestStanding({ standing, zone }: { standing: GuestCoveringView['standing']; zone: string }) {
  const { t, lang } = useWords();
  const { phase, without, takenBack } = standing;
  return (
    <>
      <div>{t(`hold.state.${phase}`)}</div>
      {without === null ? null : <div>{t('hold.without', { reason: without })}</div>}
      {takenBack === null ? null : (
        <div>
          {t('guest.takenBack', {
            when: formatInstant(takenBack.at, zone, lang),
            reason: takenBack.reason,
          })}
        </div>
      )}
    </>
  );
}

interface GuestLineProps {
  secret: string;
  zone: string;
  line: GuestCoveringView['lines'][number];
}

function GuestLine({ secret, zone, line }: GuestLineProps) {
  const { t, lang } = useWords();
  const { mark, kind, place, least, state, missing, waiver, pictures } = line;
  const parts = missing.map((part) => stretchWords(t, lang, part));
  return (
    <article className="guest-line">
      <h3>{mark}</h3>
      <p>
        {kind === '' ? null : <KindName kind={kind} />} {place}
      </p>
      <p>{t('guest.least', { stage: t(`common.stage.${least}`) })}</p>
      <p className={state === 'gap' || state === 'lost' ? 'act-text' : undefined}>
        {t(`report.state.${state}`)}
      </p>
      {waiver === null ? null : (
        <p>
          {t(waiver.isTakenBack ? 'guest.accepted.before' : 'guest.accepted.now', {
            when: formatInstant(waiver.at, zone, lang),
            reason: waiver.reason,
          })}
        </p>
      )}
      {state === 'lost' ? <p>{t('guest.lost')}</p> : null}
      {parts.length === 0 ? null : <p>{t('guest.missing', { parts: formatList(parts, lang) })}</p>}
      <GuestPictures secret={secret} zone={zone} mark={mark} pictures={pictures} />
    </article>
  );
}
