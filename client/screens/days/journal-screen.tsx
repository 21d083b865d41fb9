import { useQuery } from '@tanstack/react-query';
import type { JournalView } from '#domain/contract/journal-views';
import { call } from '../../api/call.ts';
import { keys } from '../../api/keys.ts';
import { formatDay } from '../../i18n/format.ts';
import { useWords } from '../../i18n/use-words.ts';
import { Page } from '../../parts/page.tsx';
import { QueryState } from '../../parts/query-state.tsx';
import { useHouse, useHouseCounts } from '../../shell/use-house.ts';
import { ClosesNext } from './closes-next.tsx';
import { countWords } from './day-words.ts';
import { EarlierDays } from './earlier-days.tsx';
import { firstSteps } from './first-steps.ts';
import { FirstSteps } from './first-steps-list.tsx';
import { LastDay } from './last-day.tsx';
import { Today } from './today.tsx';
import { Tour } from './tour.tsx';
import { ImpossibleDates, WaitingPhotos } from './waiting.tsx';
import './days.css';

/** The front page of a house: what closes next and what is missing for it, then the days, the newest first. */
export function JournalScreen() {
  const { t, lang } = useWords();
  const { id: house, role } = useHouse();
  const query = useQuery({
    queryKey: keys.journal(house),
    queryFn: ({ signal }) => call('readJournal', { params: { house }, signal }),
  });
  const today = query.data?.today;
  const soFar = today ? countWords(t, lang, today) : '';
  const lead = today
    ? t(soFar === '' ? 'days.leadEmpty' : 'days.lead', { day: formatDay(today.day, lang), soFar })
    : undefined;
  return (
    <Page title={t('days.title')} lead={lead}>
      <p className="soft">{t('houses.role', { role: t(`common.role.${role}`) })}</p>
      <QueryState query={query}>{(journal) => <FrontPage journal={journal} />}</QueryState>
    </Page>
  );
}

function FrontPage({ journal }: { journal: JournalView }) {
  const { t } = useWords();
  const counts = useHouseCounts();
  const isFresh = firstSteps({ ...useHouse(), counts }).length > 0;
  return (
    <div className="front-page">
      {isFresh ? null : <Tour journal={journal} />}
      <div className="front-next">
        {isFresh ? <FirstSteps /> : null}
        {isFresh && counts.coverings === 0 ? null : (
          <section className="section">
            <h2>{t('days.next')}</h2>
            <ClosesNext journal={journal} />
          </section>
        )}
        <WaitingPhotos waiting={journal.waiting} />
      </div>
      <div className="front-days">
        <Today journal={journal} />
        {journal.lastDay ? <LastDay day={journal.lastDay} today={journal.today.day} /> : null}
        <ImpossibleDates waiting={journal.waiting} />
        <EarlierDays earlier={journal.earlier} />
      </div>
    </div>
  );
}
