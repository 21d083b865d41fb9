import { useState } from 'react';
import type { ClockMarkFacts } from '#domain/contract/clock';
import type { PhotoView } from '#domain/contract/views';
import { call } from '../../api/call.ts';
import { useStableId } from '../../api/use-stable-id.ts';
import { useWords } from '../../i18n/use-words.ts';
import { Button } from '../../parts/button.tsx';
import { Dialog } from '../../parts/dialog.tsx';
import { Field } from '../../parts/field.tsx';
import { ProblemNotice } from '../../parts/notice.tsx';
import { RadioChoice } from '../../parts/radio-choice.tsx';
import { useHouse } from '../../shell/use-house.ts';
import { clockShift, isFarOff } from './clock-shift.ts';
import { ShiftWords } from './shift-words.tsx';
import { instantOf } from './time-drafts.ts';
import { useTimeSaid } from './use-time-said.ts';

const WITHIN = ['5', '60', '300'] as const;

/** What the clock in the picture shows. Begins empty: the camera's own time would be confirmed unread. */
export function ClockMarkDialog({ photo, onClose }: { photo: PhotoView; onClose: () => void }) {
  const { t } = useWords();
  const { id: house, zone } = useHouse();
  const idFor = useStableId();
  const [when, setWhen] = useState('');
  /** The time of which it was said that the clock was that far off: another time is asked of anew. */
  const [agreedTo, setAgreedTo] = useState<string | null>(null);
  const [within, setWithin] = useState<(typeof WITHIN)[number]>('60');
  const [note, setNote] = useState('');
  const [wasTried, setWasTried] = useState(false);
  const trueTime = instantOf(when, zone);
  const shift = clockShift(photo.readings, trueTime, zone);
  const isHeld = isFarOff(shift) && agreedTo !== when;
  const mark = useTimeSaid(
    house,
    (facts: ClockMarkFacts) =>
      call('markClock', { params: { photo: photo.id }, body: { id: idFor(facts), ...facts } }),
    onClose,
  );
  return (
    <Dialog title={t('clock.mark.title')} isOpen onClose={onClose} stands="aside">
      <form
        className="stack"
        noValidate
        onSubmit={(event) => {
          event.preventDefault();
          setWasTried(true);
          if (trueTime !== null && !isHeld)
            mark.mutate({ trueTime, withinS: Number(within), note: note.trim() });
        }}
      >
        <p>{t('clock.mark.text')}</p>
        {photo.readings.serial === null ? <p>{t('clock.mark.noSerial')}</p> : null}
        <Field
          type="datetime-local"
          step={1}
          label={t('clock.mark.when', { zone })}
          value={when}
          error={wasTried && trueTime === null ? t('clock.mark.badTime') : null}
          onChange={setWhen}
          autoFocus
        />
        <ShiftWords
          camera={photo.readings}
          seconds={shift}
          isAgreed={agreedTo === when}
          isMissed={wasTried && isHeld}
          onAgree={(isAgreed) => setAgreedTo(isAgreed ? when : null)}
        />
        <RadioChoice
          label={t('clock.mark.within')}
          value={within}
          choices={WITHIN.map((value) => ({ value, label: t(`clock.mark.sure.${value}`) }))}
          onChange={setWithin}
        />
        <Field
          label={t('clock.mark.note')}
          description={t('common.optional')}
          value={note}
          onChange={setNote}
          maxLength={1000}
        />
        <ProblemNotice error={mark.error} keepsTyped />
        <div className="row">
          <Button type="submit" look="act" isPending={mark.isPending}>
            {t('clock.mark.submit')}
          </Button>
          <Button onPress={onClose}>{t('common.cancel')}</Button>
        </div>
      </form>
    </Dialog>
  );
}
