import { useQuery } from '@tanstack/react-query';
import { useParams } from 'react-router';
import { call } from '../../api/call.ts';
import { keys } from '../../api/keys.ts';
import { formatDay } from '../../i18n/format.ts';
import { useWords } from '../../i18n/use-words.ts';
import { LinkButton } from '../../parts/button.tsx';
import { EmptyState } from '../../parts/empty-state.tsx';
import { Page } from '../../parts/page.tsx';
import { QueryState } from '../../parts/query-state.tsx';
import { useHouse } from '../../shell/use-house.ts';
import { DayContent } from './day-content.tsx';
import { dayAfter, isDay } from './day-step.ts';
import './days.css';

export function DayScreen() {
  const { t } = useWords();
  const { id: house } = useHouse();
  const { date = '' } = useParams();
  const crumbs = [{ to: `/houses/${house}`, label: t('common.nav.journal') }];
  if (isDay(date)) return <DayPage key={date} date={date} />;
  return (
    <Page title={t('days.day.invalid')} breadcrumb={crumbs}>
      <EmptyState title={t('days.day.invalidText')} />
    </Page>
  );
}

function DayPage({ date }: { date: string }) {
  const { t, lang } = useWords();
  const { id: house } = useHouse();
  const query = useQuery({
    queryKey: keys.day(house, date),
    queryFn: ({ signal }) => call('readDay', { params: { house, date }, signal }),
  });
  const step = (days: number) => `/houses/${house}/days/${dayAfter(date, days)}`;
  return (
    <Page
      title={formatDay(date, lang)}
      breadcrumb={[{ to: `/houses/${house}`, label: t('common.nav.journal') }]}
      actions={
        <>
          <LinkButton to={step(-1)}>{t('days.day.before')}</LinkButton>
          <LinkButton to={step(1)}>{t('days.day.after')}</LinkButton>
        </>
      }
    >
      <QueryState query={query}>{(day) => <DayContent day={day} />}</QueryState>
    </Page>
  );
}
