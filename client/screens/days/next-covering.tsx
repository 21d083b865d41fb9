import { Link } from 'react-router';
import type { NextClosingsView } from '#domain/contract/journal-views';
import { formatDay } from '../../i18n/format.ts';
import { useWords } from '../../i18n/use-words.ts';
import { useHouse } from '../../shell/use-house.ts';
import { DaysLeft } from '../coverings/days-left.tsx';
import { MissingMembers, type MissingMembersProps } from './missing-members.tsx';

export interface NextCoveringProps extends Pick<MissingMembersProps, 'withReading'> {
  covering: NextClosingsView['gaps'][number];
}

/** One covering that will close with gaps: when, how many, and which members. */
export function NextCovering({ covering, withReading }: NextCoveringProps) {
  const { t, lang } = useWords();
  const { id: house } = useHouse();
  const { id, name, kind, plannedDay, daysLeft, counts, missing, more } = covering;
  const hidden = t('common.count.members', { count: counts.hidden });
  return (
    <article className="next-covering">
      <h3>
        <Link to={`/houses/${house}/coverings/${id}`}>{name}</Link>{' '}
        <span className="soft">{t(`common.coveringKind.${kind}`)}</span>
      </h3>
      <p className="next-when">
        {plannedDay === null ? null : <span>{formatDay(plannedDay, lang)}</span>}
        <strong>
          <DaysLeft days={daysLeft} />
        </strong>
        <span className="act-text">{t('days.gapsLeft', { count: counts.gaps, hidden })}</span>
      </p>
      <MissingMembers lines={missing} withReading={withReading} />
      {more > 0 ? (
        <p>
          <Link className="line-link" to={`/houses/${house}/coverings/${id}`}>
            {t('days.moreMissing', { count: more })}
          </Link>
        </p>
      ) : null}
    </article>
  );
}
