import { useQuery } from '@tanstack/react-query';
import { Link } from 'react-router';
import type { CoveringView } from '#domain/contract/views';
import { daysBetween } from '#domain/record/days-between';
import { call } from '../../api/call.ts';
import { keys } from '../../api/keys.ts';
import { dayIn, formatDay, formatInstant } from '../../i18n/format.ts';
import { useWords } from '../../i18n/use-words.ts';
import { QueryState } from '../../parts/query-state.tsx';
import { useHouse } from '../../shell/use-house.ts';
import { LineTable } from '../report/line-table.tsx';
import { useReport } from '../report/use-report.ts';
import '../report/report.css';
import { findCovering } from './closing-preview.ts';
import { HoldHistory } from './hold-history.tsx';
import { HoldPart } from './hold-part.tsx';
import { LayerList } from './layer-list.tsx';
import { DaysLeft } from './days-left.tsx';
import { WallFigures } from './wall-figures.tsx';
import { standingOf } from './standing-of.ts';
import { ZoneUnreadNotice } from './zone-unread-notice.tsx';
import { zoneUnread } from './zone-unread.ts';

export function CoveringDetails({ covering }: { covering: CoveringView }) {
  const { t, lang } = useWords();
  const { id: house, zone } = useHouse();
  const report = useReport(house);
  const grid = useQuery({
    queryKey: keys.grid(house),
    meta: { isAside: true },
    queryFn: ({ signal }) => call('readGrid', { params: { house }, signal }),
  });
  const unread = grid.data ? zoneUnread(covering.zone, grid.data.grid) : null;
  return (
    <>
      <dl className="facts">
        <dt>{t('coverings.one.kind')}</dt>
        <dd>{t(`common.coveringKind.${covering.kind}`)}</dd>
        <dt>{t('coverings.one.closing')}</dt>
        <dd>
          <ClosingWords covering={covering} />
        </dd>
        {covering.note === '' ? null : (
          <>
            <dt>{t('coverings.one.note')}</dt>
            <dd className="coverings-note">{covering.note}</dd>
          </>
        )}
        <dt>{t('coverings.one.changed')}</dt>
        <dd>{formatInstant(covering.changedAt, zone, lang)}</dd>
      </dl>
      <HoldPart covering={covering} standing={standingOf(covering, report.data)} />
      <LayerList covering={covering} />
      <section className="section">
        <h2>{t('coverings.one.hides')}</h2>
        {unread ? <ZoneUnreadNotice why={unread} /> : null}
        <QueryState query={report}>
          {(all) => {
            const lines = findCovering(all, covering.id)?.lines ?? [];
            if (lines.length === 0)
              return unread ? null : <p className="soft">{t('coverings.one.hidesNothing')}</p>;
            return (
              <LineTable
                label={t('report.table', { name: covering.name })}
                lines={lines}
                isClosed={covering.closed !== null}
              />
            );
          }}
        </QueryState>
        <p>
          <Link className="alone" to={`/houses/${house}/report`}>
            {t('coverings.one.inReport')}
          </Link>
        </p>
      </section>
      {covering.kind === 'plaster' && covering.zone?.shape === 'wall' ? (
        <WallFigures covering={covering} />
      ) : null}
      <HoldHistory covering={covering.id} />
    </>
  );
}

function ClosingWords({ covering: { closed, plannedDay } }: { covering: CoveringView }) {
  const { t, lang } = useWords();
  const { zone } = useHouse();
  const planned =
    plannedDay === null ? t('coverings.noDay') : t('coverings.planned', { day: formatDay(plannedDay, lang) });
  if (!closed) {
    return (
      <span className="row">
        {plannedDay === null ? null : <span>{planned}</span>}
        <DaysLeft days={plannedDay === null ? null : daysBetween(dayIn(zone, new Date()), plannedDay)} />
      </span>
    );
  }
  const when = formatInstant(closed.at, zone, lang);
  return (
    <>
      <div>{t('coverings.one.closedBy', { when, who: closed.by?.name ?? t('common.nobody') })}</div>
      <div className="soft">{planned}</div>
      {closed.note === '' ? null : <div className="coverings-note">{closed.note}</div>}
    </>
  );
}
