import { useState, type FormEvent } from 'react';
import { useMutation, useQueryClient } from '@tanstack/react-query';
import { GUEST_DAYS } from '#domain/contract/link-days';
import type { BodyInput } from '#domain/contract/routes';
import { call } from '../../api/call.ts';
import { keys } from '../../api/keys.ts';
import { useStableId } from '../../api/use-stable-id.ts';
import { useWords } from '../../i18n/use-words.ts';
import { Button } from '../../parts/button.tsx';
import { CopyLine } from '../../parts/copy-line.tsx';
import { Field } from '../../parts/field.tsx';
import { Notice, ProblemNotice } from '../../parts/notice.tsx';
import { useHouse } from '../../shell/use-house.ts';
import { DaysSelect } from './days-select.tsx';
import { Outcome } from './outcome.tsx';
import { ShownChoice, type Shown } from './shown-choice.tsx';

/** Makes a link for somebody without an account. */
export function AdmitGuest() {
  const { t } = useWords();
  const { id: house } = useHouse();
  const client = useQueryClient();
  const idFor = useStableId();
  const [label, setLabel] = useState('');
  const [shows, setShows] = useState<Shown>(null);
  const [days, setDays] = useState<number>(GUEST_DAYS.usual);
  const [made, setMade] = useState(0);
  const [tried, setTried] = useState(false);
  const admit = useMutation({
    mutationFn: (asked: Omit<BodyInput<'admitGuest'>, 'id'>) =>
      call('admitGuest', { params: { house }, body: { ...asked, id: idFor({ ...asked, made }) } }),
    onSuccess: async () => {
      setMade(made + 1);
      setLabel('');
      setTried(false);
      await client.invalidateQueries({ queryKey: keys.people(house) });
    },
  });
  const submit = (event: FormEvent) => {
    event.preventDefault();
    setTried(true);
    if (label.trim() !== '' && shows) admit.mutate({ label: label.trim(), shows, days });
  };
  return (
    <>
      <h3>{t('people.guests.addTitle')}</h3>
      <form className="form" onSubmit={submit} noValidate>
        <Field
          label={t('people.guests.label')}
          description={t('people.guests.labelHint')}
          maxLength={100}
          autoComplete="off"
          value={label}
          onChange={setLabel}
          error={tried && label.trim() === '' ? t('people.guests.labelMissing') : null}
        />
        <ShownChoice value={shows} onChange={setShows} isMissing={tried && shows === null} />
        <DaysSelect
          label={t('people.guests.days')}
          choices={GUEST_DAYS.choices}
          value={days}
          onChange={setDays}
        />
        <ProblemNotice error={admit.error} keepsTyped />
        <div className="row">
          <Button type="submit" isPending={admit.isPending}>
            {t('people.guests.submit')}
          </Button>
        </div>
      </form>
      {admit.data ? (
        <Outcome of={admit.data}>
          <Notice tone="done">
            <p>{t('people.guests.made', { label: admit.data.guest.label })}</p>
            <CopyLine
              label={t('people.guests.link')}
              text={`${window.location.origin}/guest/${admit.data.secret}`}
            />
          </Notice>
        </Outcome>
      ) : null}
    </>
  );
}
