import { useState } from 'react';
import { useMutation, useQuery, useQueryClient } from '@tanstack/react-query';
import type { CalendarLinkView } from '#domain/contract/calendar';
import { addressOf } from '../../api/address.ts';
import { call } from '../../api/call.ts';
import { keys } from '../../api/keys.ts';
import { formatInstant } from '../../i18n/format.ts';
import { useWords } from '../../i18n/use-words.ts';
import { Button } from '../../parts/button.tsx';
import { Confirm } from '../../parts/confirm.tsx';
import { CopyLine } from '../../parts/copy-line.tsx';
import { Notice, ProblemNotice } from '../../parts/notice.tsx';
import { QueryState } from '../../parts/query-state.tsx';
import { useHouse } from '../../shell/use-house.ts';

/** The person's own address of the closings for a calendar program. */
export function CalendarSection() {
  const { t, lang } = useWords();
  const { id: house } = useHouse();
  const client = useQueryClient();
  const [asking, setAsking] = useState<'new' | 'end' | null>(null);
  const query = useQuery({
    queryKey: keys.calendarLink(house),
    queryFn: ({ signal }) => call('readCalendarLink', { params: { house }, signal }),
  });
  const onSuccess = async () => {
    setAsking(null);
    await client.invalidateQueries({ queryKey: keys.calendarLink(house) });
  };
  const make = useMutation({
    mutationFn: () => call('makeCalendarLink', { params: { house }, body: { lang } }),
    onSuccess,
  });
  const end = useMutation({
    mutationFn: () => call('endCalendarLink', { params: { house } }),
    onSuccess: () => {
      make.reset();
      return onSuccess();
    },
  });
  return (
    <section className="section" aria-labelledby="calendar">
      <h2 id="calendar">{t('calendar.title')}</h2>
      <p>{t('calendar.lead')}</p>
      <p className="soft">{t('calendar.reads')}</p>
      {make.data ? <MadeAddress secret={make.data.secret} /> : null}
      <QueryState query={query}>
        {({ link }) =>
          link ? (
            <>
              <LinkFacts link={link} />
              <div className="row">
                <Button onPress={() => setAsking('new')}>{t('calendar.makeNew')}</Button>
                <Button onPress={() => setAsking('end')}>{t('calendar.end')}</Button>
              </div>
            </>
          ) : (
            <>
              <ProblemNotice error={make.error} />
              <div className="row">
                <Button isPending={make.isPending} onPress={() => make.mutate()}>
                  {t('calendar.make')}
                </Button>
              </div>
            </>
          )
        }
      </QueryState>
      <Confirm
        title={t('calendar.newTitle')}
        text={t('calendar.newText')}
        yes={t('calendar.make')}
        isOpen={asking === 'new'}
        isPending={make.isPending}
        error={make.error}
        onYes={() => make.mutate()}
        onClose={() => setAsking(null)}
      />
      <Confirm
        title={t('calendar.endTitle')}
        text={t('calendar.endText')}
        yes={t('calendar.endYes')}
        isOpen={asking === 'end'}
        isPending={end.isPending}
        error={end.error}
        onYes={() => end.mutate()}
        onClose={() => setAsking(null)}
      />
    </section>
  );
}

function MadeAddress({ secret }: { secret: string }) {
  const { t } = useWords();
  return (
    <Notice tone="done">
      <p>
        <strong>{t('calendar.madeTitle')}</strong>
      </p>
      <p>{t('calendar.madeText')}</p>
      <CopyLine
        label={t('calendar.address')}
        text={`${window.location.origin}${addressOf('readCalendar', { calendar: secret })}`}
      />
    </Notice>
  );
}

function LinkFacts({ link: { createdAt, lastReadAt, lang: titles } }: { link: CalendarLinkView }) {
  const { t, lang } = useWords();
  const { zone } = useHouse();
  const when = formatInstant(createdAt, zone, lang);
  return (
    <p>
      {t('calendar.have', { when, language: t(`calendar.language.${titles}`) })}{' '}
      {lastReadAt === null
        ? t('calendar.neverRead')
        : t('calendar.readLast', { when: formatInstant(lastReadAt, zone, lang) })}
    </p>
  );
}
