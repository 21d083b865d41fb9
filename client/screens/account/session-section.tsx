import { useState } from 'react';
import { useQuery } from '@tanstack/react-query';
import type { SessionView } from '#domain/contract/views';
import { call } from '../../api/call.ts';
import { keys } from '../../api/keys.ts';
import { formatDay, dayIn, formatInstant } from '../../i18n/format.ts';
import { useWords } from '../../i18n/use-words.ts';
import { Button } from '../../parts/button.tsx';
import { QueryState } from '../../parts/query-state.tsx';
import { Table } from '../../parts/table.tsx';
import { deviceName } from './device-name.ts';
import { EndSessions } from './end-sessions.tsx';

/** Sessions belong to no house: their times are shown in the zone of this device. */
const HERE = Intl.DateTimeFormat().resolvedOptions().timeZone;

export function SessionSection() {
  const { t } = useWords();
  const [isEnding, setIsEnding] = useState(false);
  const query = useQuery({
    queryKey: keys.sessions,
    queryFn: ({ signal }) => call('listSessions', { signal }),
  });
  return (
    <section className="section">
      <h2>{t('password.sessions.title')}</h2>
      <p className="lead">{t('password.sessions.lead')}</p>
      <QueryState query={query}>{({ sessions }) => <SessionTable sessions={sessions} />}</QueryState>
      <div className="row">
        <Button look="danger" onPress={() => setIsEnding(true)}>
          {t('password.sessions.end')}
        </Button>
      </div>
      {isEnding ? <EndSessions onClose={() => setIsEnding(false)} /> : null}
    </section>
  );
}

function SessionTable({ sessions }: { sessions: readonly SessionView[] }) {
  const { t, lang } = useWords();
  const { device, since, seen } = t('password.sessions', { returnObjects: true });
  return (
    <Table label={t('password.sessions.list')} hideLabel headings={[device, since, seen]} onPhone="blocks">
      {sessions.map(({ id, createdAt, seenAt, userAgent, here }) => {
        const name = deviceName(userAgent);
        return (
          <tr key={id}>
            <th scope="row">
              {name === null ? t('password.sessions.unknown') : t('password.sessions.browserOn', name)}{' '}
              {here ? <span className="soft">{t('password.sessions.here')}</span> : null}
            </th>
            <td data-label={since}>{formatInstant(createdAt, HERE, lang)}</td>
            <td data-label={seen}>{formatDay(dayIn(HERE, new Date(seenAt)), lang)}</td>
          </tr>
        );
      })}
    </Table>
  );
}
