import { useState, type FormEvent } from 'react';
import type { DatingFacts } from '#domain/contract/clock';
import type { PhotoView } from '#domain/contract/views';
import { call } from '../../api/call.ts';
import { useWords } from '../../i18n/use-words.ts';
import { Button } from '../../parts/button.tsx';
import { Dialog } from '../../parts/dialog.tsx';
import { Field } from '../../parts/field.tsx';
import { ProblemNotice } from '../../parts/notice.tsx';
import { RadioChoice } from '../../parts/radio-choice.tsx';
import { useHouse } from '../../shell/use-house.ts';
import { SURE, dateFaults, readDate, type DateDraft } from './time-drafts.ts';
import { useTimeSaid } from './use-time-said.ts';

const EMPTY: DateDraft = { day: '', time: '', sure: 'minute', reason: '' };

/** A named person says when a photo was taken whose file does not, and how that is known. */
export function DatePhotoDialog({ photo, onClose }: { photo: PhotoView; onClose: () => void }) {
  const { t } = useWords();
  const { id: house, zone } = useHouse();
  const [draft, setDraft] = useState(EMPTY);
  const [wasTried, setWasTried] = useState(false);
  const faults = wasTried ? dateFaults(draft) : [];
  const date = useTimeSaid(
    house,
    (facts: DatingFacts) => call('datePhoto', { params: { photo: photo.id }, body: facts }),
    onClose,
  );
  const change = (part: Partial<DateDraft>) => setDraft({ ...draft, ...part });
  const submit = (event: FormEvent) => {
    event.preventDefault();
    setWasTried(true);
    const facts = readDate(draft, zone, Date.now());
    if (facts) date.mutate(facts);
  };
  return (
    <Dialog title={t('clock.date.title')} isOpen onClose={onClose}>
      <form className="stack" onSubmit={submit} noValidate>
        <p>{t('clock.date.text')}</p>
        <Field
          type="date"
          label={t('clock.date.day')}
          value={draft.day}
          onChange={(day) => change({ day })}
          error={faults.includes('needDay') ? t('clock.date.needDay') : null}
          autoFocus
        />
        <RadioChoice
          label={t('clock.date.how')}
          value={draft.sure}
          choices={SURE.map((value) => ({ value, label: t(`clock.date.sure.${value}`) }))}
          onChange={(sure) => change({ sure })}
        />
        {draft.sure === 'day' ? null : (
          <Field
            type="time"
            label={t('clock.date.time', { zone })}
            value={draft.time}
            onChange={(time) => change({ time })}
            error={faults.includes('needTime') ? t('clock.date.needTime') : null}
          />
        )}
        <Field
          label={t('clock.date.reason')}
          description={t('clock.date.reasonHint')}
          value={draft.reason}
          onChange={(reason) => change({ reason })}
          maxLength={1000}
          error={faults.includes('needReason') ? t('clock.needReason') : null}
        />
        <ProblemNotice error={date.error} keepsTyped />
        <div className="row">
          <Button type="submit" look="act" isPending={date.isPending}>
            {t('clock.date.submit')}
          </Button>
          <Button onPress={onClose}>{t('common.cancel')}</Button>
        </div>
      </form>
    </Dialog>
  );
}
