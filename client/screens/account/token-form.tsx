import { useState, type FormEvent } from 'react';
import { useMutation, useQueryClient } from '@tanstack/react-query';
import { call } from '../../api/call.ts';
import { keys } from '../../api/keys.ts';
import { useStableId } from '../../api/use-stable-id.ts';
import { useWords } from '../../i18n/use-words.ts';
import { Button } from '../../parts/button.tsx';
import { Field } from '../../parts/field.tsx';
import { ProblemNotice } from '../../parts/notice.tsx';
import { Select } from '../../parts/select.tsx';

const DAYS = { month: 30, year: 365, always: null } as const;
type Lasting = keyof typeof DAYS;

function endOf(lasting: Lasting): string | null {
  const days = DAYS[lasting];
  return days === null ? null : new Date(Date.now() + days * 86_400_000).toISOString();
}

export function TokenForm({ onMade }: { onMade: (name: string, secret: string) => void }) {
  const { t } = useWords();
  const client = useQueryClient();
  const idFor = useStableId();
  const [name, setName] = useState('');
  const [lasting, setLasting] = useState<Lasting>('year');
  const [tried, setTried] = useState(false);
  const make = useMutation({
    mutationFn: () => {
      const body = { name: name.trim(), expiresAt: endOf(lasting) };
      return call('createToken', { body: { ...body, id: idFor(body) } });
    },
    onSuccess: async ({ token, secret }) => {
      onMade(token.name, secret);
      setName('');
      setTried(false);
      await client.invalidateQueries({ queryKey: keys.tokens });
    },
  });
  const submit = (event: FormEvent) => {
    event.preventDefault();
    setTried(true);
    if (name.trim() !== '') make.mutate();
  };
  return (
    <form className="form" onSubmit={submit} noValidate>
      <Field
        label={t('tokens.newName')}
        maxLength={100}
        autoComplete="off"
        value={name}
        onChange={setName}
        error={tried && name.trim() === '' ? t('tokens.nameMissing') : null}
      />
      <Select
        label={t('tokens.lasting')}
        value={lasting}
        onChange={setLasting}
        choices={(['month', 'year', 'always'] as const).map((value) => ({
          value,
          label: t(`tokens.lastingChoice.${value}`),
        }))}
      />
      <ProblemNotice error={make.error} keepsTyped />
      <div className="row">
        <Button type="submit" isPending={make.isPending}>
          {t('tokens.submit')}
        </Button>
      </div>
    </form>
  );
}
