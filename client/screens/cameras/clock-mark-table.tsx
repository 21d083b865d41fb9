import { useState } from 'react';
import { Link } from 'react-router';
import type { CameraView, ClockMarkView } from '#domain/contract/clock';
import { call } from '../../api/call.ts';
import { formatInstant } from '../../i18n/format.ts';
import { signedSpan, withinSpan } from '../../i18n/span-words.ts';
import { useWords } from '../../i18n/use-words.ts';
import { Button } from '../../parts/button.tsx';
import { ReasonDialog } from '../../parts/reason-dialog.tsx';
import { Table } from '../../parts/table.tsx';
import { IfMay } from '../../shell/if-may.tsx';
import { useHouse } from '../../shell/use-house.ts';
import { useTimeSaid } from '../bench/use-time-said.ts';

const COLUMNS = ['shown', 'true', 'off', 'by', 'act'] as const;

/** The marks of one camera in the order of its clock; each can be withdrawn with a reason. */
export function ClockMarkTable({ camera, name }: { camera: CameraView; name: string }) {
  const { t } = useWords();
  const [leaving, setLeaving] = useState<string | null>(null);
  return (
    <>
      <Table
        label={t('clock.marks', { camera: name })}
        hideLabel
        headings={COLUMNS.map((key) => t(`clock.column.${key}`))}
        onPhone="blocks"
      >
        {camera.marks.map((mark) => (
          <MarkRow
            key={mark.id}
            mark={mark}
            wasSet={camera.setBetween.some(({ to }) => to === mark.id)}
            onWithdraw={() => setLeaving(mark.id)}
          />
        ))}
      </Table>
      {leaving === null ? null : <WithdrawMark mark={leaving} onClose={() => setLeaving(null)} />}
    </>
  );
}

interface MarkRowProps {
  mark: ClockMarkView;
  wasSet: boolean;
  onWithdraw: () => void;
}

function MarkRow({ mark, wasSet, onWithdraw }: MarkRowProps) {
  const { t, lang } = useWords();
  const { id: house, zone } = useHouse();
  const when = formatInstant(mark.trueTime, zone, lang);
  const said = { who: mark.by?.name ?? t('common.nobody'), when: formatInstant(mark.at, zone, lang) };
  return (
    <tr>
      <th scope="row">
        <Link to={`/houses/${house}/photos/${mark.photo}`} aria-label={t('clock.photoNamed', { when })}>
          {mark.shown.wallTime.slice(0, 19).replace('T', ' ')}
        </Link>
        {wasSet ? <div className="act-text">{t('clock.setBefore')}</div> : null}
      </th>
      <td data-label={t('clock.column.true')}>{when}</td>
      <td data-label={t('clock.column.off')}>
        {signedSpan(t, lang, mark.seconds)}{' '}
        <span className="soft">{t('clock.within', { span: withinSpan(t, mark.withinS) })}</span>
      </td>
      <td data-label={t('clock.column.by')}>
        {t('clock.saidBy', said)}
        {mark.note === '' ? null : <div className="soft">{mark.note}</div>}
      </td>
      <td>
        <IfMay act="record">
          <Button aria-label={t('clock.withdrawNamed', { when })} onPress={onWithdraw}>
            {t('clock.withdraw')}
          </Button>
        </IfMay>
      </td>
    </tr>
  );
}

function WithdrawMark({ mark, onClose }: { mark: string; onClose: () => void }) {
  const { t } = useWords();
  const { id: house } = useHouse();
  const withdraw = useTimeSaid(
    house,
    (reason: string) => call('withdrawClockMark', { params: { clockMark: mark }, query: { reason } }),
    onClose,
  );
  return (
    <ReasonDialog
      title={t('clock.withdrawTitle')}
      text={t('clock.withdrawText')}
      yes={t('clock.submitWithdraw')}
      isPending={withdraw.isPending}
      error={withdraw.error}
      onYes={withdraw.mutate}
      onClose={onClose}
    />
  );
}
