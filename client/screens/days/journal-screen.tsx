import { useQuery } from '@tanstack/react-query';
import { call } from '../../api/call.ts';
import { keys } from '../../api/keys.ts';
import { dayIn } from '../../i18n/format.ts';
import { useWords } from '../../i18n/use-words.ts';
import { LinkButton } from '../../parts/button.tsx';
import { Page } from '../../parts/page.tsx';
import { QueryState } from '../../parts/query-state.tsx';
import { useHouse } from '../../shell/use-house.ts';
import { DayList } from './day-list.tsx';
import { NextClosings } from './next-closings-list.tsx';
import './days.css';

export function JournalScreen() {
  const { t } = useWords();
  const { id: house, zone } = useHouse();
  const days = useQuery({
    queryKey: keys.days(house),
    queryFn: ({ signal }) => call('listDays', { params: { house }, signal }),
  });
  const report = useQuery({
    queryKey: keys.report(house),
    queryFn: ({ signal }) => call('closingReport', { params: { house }, signal }),
  });
  const today = dayIn(zone, new Date());
  return (
    <Page
      title={t('days.title')}
      actions={<LinkButton to={`/houses/${house}/days/${today}`}>{t('days.today')}</LinkButton>}
    >
      <section className="section">
        <h2>{t('days.next')}</h2>
        <QueryState query={report}>{(answer) => <NextClosings report={answer} />}</QueryState>
      </section>
      <section className="section">
        <h2>{t('days.days')}</h2>
        <QueryState query={days}>{(answer) => <DayList days={answer.days} />}</QueryState>
      </section>
    </Page>
  );
}
