import type { SchedulePreviewView } from '#domain/contract/schedule-views';
import { useWords } from '../../i18n/use-words.ts';

const SHOWN = 100;

/** Level members whose two heights cannot be underside and top of one piece. */
export function DoubtfulHeights({ members }: { members: SchedulePreviewView['doubtfulHeights'] }) {
  const { t } = useWords();
  if (members.length === 0) return null;
  return (
    <section className="section">
      <h2>{t('schedule.heights.title', { count: members.length })}</h2>
      <p className="soft">{t('schedule.heights.lead')}</p>
      <ul>
        {members.slice(0, SHOWN).map(({ depth, ...said }) => (
          <li key={said.mark}>
            {depth === null
              ? t('schedule.heights.deep', { ...said, between: said.top - said.underside })
              : t('schedule.heights.unlike', { ...said, depth, between: said.top - said.underside })}
          </li>
        ))}
      </ul>
      {members.length > SHOWN ? (
        <p>{t('schedule.outcome.andMore', { count: members.length - SHOWN })}</p>
      ) : null}
    </section>
  );
}
