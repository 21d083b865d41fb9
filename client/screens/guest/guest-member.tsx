import type { GuestMemberView } from '#domain/contract/guests';
import { joinWords } from '../../i18n/join-words.ts';
import { formatInstant } from '../../i18n/format.ts';
import { useWords } from '../../i18n/use-words.ts';
import { KindName } from '../../parts/kind-name.tsx';
import { Notice } from '../../parts/notice.tsx';
import { StageName } from '../../parts/stage-name.tsx';
import { stageIntervalWords } from '../members/stage-interval-words.ts';
import { closingWords } from './closing-words.ts';
import { GuestPictures } from './guest-pictures.tsx';

export interface GuestMemberProps {
  secret: string;
  house: string;
  zone: string;
  member: GuestMemberView;
}

export function GuestMember({ secret, house, zone, member }: GuestMemberProps) {
  const { t } = useWords();
  const { kind, place, retired, stages, coverings } = member;
  return (
    <>
      {retired ? <Notice>{t('members.retired')}</Notice> : null}
      <dl className="facts">
        <dt>{t('guest.house')}</dt>
        <dd>{house}</dd>
        {kind === '' ? null : (
          <>
            <dt>{t('guest.kind')}</dt>
            <dd>
              <KindName kind={kind} />
            </dd>
          </>
        )}
        {place === '' ? null : (
          <>
            <dt>{t('guest.place')}</dt>
            <dd>{place}</dd>
          </>
        )}
      </dl>
      <section className="section">
        <h2>{t('guest.stages')}</h2>
        <ul className="guest-lines plain-list">
          {stages.map((one) => (
            <li key={one.stage}>
              <GuestStage secret={secret} zone={zone} mark={member.mark} stage={one} />
            </li>
          ))}
        </ul>
      </section>
      {coverings.length === 0 ? null : <GuestCoverings zone={zone} coverings={coverings} />}
    </>
  );
}

interface GuestStageProps {
  secret: string;
  zone: string;
  mark: string;
  stage: GuestMemberView['stages'][number];
}

function GuestStage({ secret, zone, mark, stage }: GuestStageProps) {
  const { t, lang } = useWords();
  const when = (instant: string) => formatInstant(instant, zone, lang);
  return (
    <article className="guest-line">
      <h3>
        <StageName stage={stage.stage} />
      </h3>
      <p>{stageIntervalWords(t, stage, when)}</p>
      {stage.contradicted ? <p className="act-text">{t('guest.contradicted')}</p> : null}
      <GuestPictures secret={secret} zone={zone} mark={mark} pictures={stage.pictures} />
    </article>
  );
}

function GuestCoverings({ zone, coverings }: { zone: string; coverings: GuestMemberView['coverings'] }) {
  const { t, lang } = useWords();
  return (
    <section className="section">
      <h2>{t('guest.coverings')}</h2>
      <ul>
        {coverings.map((covering, i) => (
          <li key={i}>
            {covering.name}{' '}
            <span className="soft">
              {joinWords(
                [t(`common.coveringKind.${covering.kind}`), closingWords(t, lang, zone, covering)],
                lang,
              )}
            </span>
          </li>
        ))}
      </ul>
    </section>
  );
}
