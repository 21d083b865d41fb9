import { useState } from 'react';
import type { PhotoView } from '#domain/contract/views';
import { call } from '../../api/call.ts';
import { useWords } from '../../i18n/use-words.ts';
import { Button } from '../../parts/button.tsx';
import { ReasonDialog } from '../../parts/reason-dialog.tsx';
import { useHouse } from '../../shell/use-house.ts';
import { ClockMarkDialog } from './clock-mark-dialog.tsx';
import { DatePhotoDialog } from './date-photo-dialog.tsx';
import { mayDate } from './time-drafts.ts';
import { useTimeSaid } from './use-time-said.ts';

/** What a person can say of the time: the clock in the picture, or the date by hand. */
export function TimeActs({ photo }: { photo: PhotoView }) {
  const { t } = useWords();
  const [open, setOpen] = useState<'mark' | 'date' | 'withdraw' | null>(null);
  const { capture, readings } = photo;
  const isByHand = capture.state === 'dated' && capture.byHand !== null;
  const canMark = readings.wallTime !== null && (readings.make !== null || readings.model !== null);
  const openMark = () => {
    // Where the words stand below the picture, it may have left the window: its clock is to be read off.
    document.querySelector('.bench-stage')?.scrollIntoView({ block: 'start' });
    setOpen('mark');
  };
  const close = () => setOpen(null);
  return (
    <div className="row">
      {canMark ? <Button onPress={openMark}>{t('clock.mark.open')}</Button> : null}
      {mayDate(capture) ? (
        <Button onPress={() => setOpen('date')}>
          {t(isByHand ? 'clock.date.again' : 'clock.date.open')}
        </Button>
      ) : null}
      {isByHand ? <Button onPress={() => setOpen('withdraw')}>{t('clock.date.withdraw')}</Button> : null}
      {open === 'mark' ? <ClockMarkDialog photo={photo} onClose={close} /> : null}
      {open === 'date' ? <DatePhotoDialog photo={photo} onClose={close} /> : null}
      {open === 'withdraw' ? <WithdrawDate photo={photo.id} onClose={close} /> : null}
    </div>
  );
}

function WithdrawDate({ photo, onClose }: { photo: string; onClose: () => void }) {
  const { t } = useWords();
  const { id: house } = useHouse();
  const withdraw = useTimeSaid(
    house,
    (reason: string) => call('withdrawDate', { params: { photo }, query: { reason } }),
    onClose,
  );
  return (
    <ReasonDialog
      title={t('clock.date.withdrawTitle')}
      text={t('clock.date.withdrawText')}
      yes={t('clock.submitWithdraw')}
      isPending={withdraw.isPending}
      error={withdraw.error}
      onYes={withdraw.mutate}
      onClose={onClose}
    />
  );
}
