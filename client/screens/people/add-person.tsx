import { useState, type FormEvent } from 'react';
import { useMutation, useQueryClient } from '@tanstack/react-query';
import { LINK_DAYS } from '#domain/contract/link-days';
import type { Role } from '#domain/contract/shapes';
import { call } from '../../api/call.ts';
import { keys } from '../../api/keys.ts';
import { useWords } from '../../i18n/use-words.ts';
import { Button } from '../../parts/button.tsx';
import { Field } from '../../parts/field.tsx';
import { ProblemNotice } from '../../parts/notice.tsx';
import { Select } from '../../parts/select.tsx';
import { useHouse } from '../../shell/use-house.ts';
import { looksLikeEmail } from '../account/credentials.ts';
import { DaysSelect } from './days-select.tsx';
import { PersonAdded } from './person-added.tsx';

const OFFERED = ['carpenter', 'inspector', 'builder', 'owner'] as const satisfies readonly Role[];

export function AddPerson() {
  const { t } = useWords();
  const { id: house } = useHouse();
  const client = useQueryClient();
  const [email, setEmail] = useState('');
  const [role, setRole] = useState<Role>('carpenter');
  const [days, setDays] = useState<number>(LINK_DAYS.usual);
  const [tried, setTried] = useState(false);
  const add = useMutation({
    mutationFn: (body: { email: string; role: Role; days: number }) =>
      call('addPerson', { params: { house }, body }),
    onSuccess: async () => {
      setEmail('');
      setTried(false);
      await client.invalidateQueries({ queryKey: keys.people(house) });
    },
  });
  const submit = (event: FormEvent) => {
    event.preventDefault();
    setTried(true);
    if (looksLikeEmail(email)) add.mutate({ email: email.trim(), role, days });
  };
  return (
    <section className="section">
      <h2>{t('people.addTitle')}</h2>
      <form className="form" onSubmit={submit} noValidate>
        <Field
          label={t('people.email')}
          type="email"
          autoComplete="off"
          value={email}
          onChange={setEmail}
          error={tried && !looksLikeEmail(email) ? t('account.missing.email') : null}
        />
        <Select
          label={t('people.addRole')}
          description={t(`people.roles.${role}`)}
          value={role}
          onChange={setRole}
          choices={OFFERED.map((value) => ({ value, label: t(`common.role.${value}`) }))}
        />
        <DaysSelect
          label={t('people.days')}
          description={t('people.daysHint')}
          choices={LINK_DAYS.choices}
          value={days}
          onChange={setDays}
        />
        <ProblemNotice error={add.error} keepsTyped />
        <div className="row">
          <Button type="submit" look="act" isPending={add.isPending}>
            {t('people.submit')}
          </Button>
        </div>
      </form>
      {add.data ? (
        <PersonAdded answer={add.data} email={add.variables.email} days={add.variables.days} />
      ) : null}
    </section>
  );
}
