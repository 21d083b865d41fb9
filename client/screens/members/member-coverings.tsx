import { Link } from 'react-router';
import type { MemberHistoryView } from '#domain/contract/views';
import { holdPhase } from '#domain/record/hold-phase';
import { formatDay, formatInstant } from '../../i18n/format.ts';
import { useWords } from '../../i18n/use-words.ts';
import { HoldStanding } from '../coverings/hold-standing.tsx';
import { HoldWaiver } from '../coverings/hold-waiver.tsx';
import { LAYER_WORDS } from '../coverings/layer-words.ts';
import { joinWords } from '../../i18n/join-words.ts';
import { useHouse } from '../../shell/use-house.ts';

type HidingCovering = MemberHistoryView['coverings'][number];

export function MemberCoverings({ coverings }: { coverings: readonly HidingCovering[] }) {
  const { t, lang } = useWords();
  const { id: house, zone } = useHouse();
  if (coverings.length === 0) return <p className="soft">{t('members.history.coveringsNone')}</p>;
  const when = ({ closed, plannedDay, hiddenAt }: HidingCovering) => {
    if (closed) {
      const said = t('members.history.closedAt', { when: formatInstant(closed.at, zone, lang) });
      return hiddenAt === null ? joinWords([said, LAYER_WORDS[lang].otherFaceOpen], lang) : said;
    }
    if (plannedDay === null) return t('members.history.noDay');
    return t('members.history.plannedFor', { day: formatDay(plannedDay, lang) });
  };
  return (
    <ul className="stack plain-list">
      {coverings.map((covering) => (
        <li key={covering.id}>
          <Link className="alone" to={`/houses/${house}/coverings/${covering.id}`}>
            {covering.name}
          </Link>
          <p className="soft">
            {t(`common.coveringKind.${covering.kind}`)} · {when(covering)} ·{' '}
            {t('members.history.needs', { stage: t(`common.stage.${covering.least}`) })}
          </p>
          {covering.closed ? (
            <p>
              <HoldStanding standing={{ ...covering.closed, phase: holdPhase(covering) }} />
            </p>
          ) : null}
          {covering.waiver ? (
            <p>
              {covering.waiver.takenBack ? null : <span>{t('report.state.waived')}</span>}{' '}
              <HoldWaiver waiver={covering.waiver} />
            </p>
          ) : null}
        </li>
      ))}
    </ul>
  );
}
