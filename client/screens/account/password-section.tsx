import { useState, type FormEvent } from 'react';
import { useMutation, useQueryClient } from '@tanstack/react-query';
import { call } from '../../api/call.ts';
import { keys } from '../../api/keys.ts';
import { useWords } from '../../i18n/use-words.ts';
import { Button } from '../../parts/button.tsx';
import { Checkbox } from '../../parts/checkbox.tsx';
import { Field } from '../../parts/field.tsx';
import { Notice, ProblemNotice } from '../../parts/notice.tsx';
import { isLongEnough } from './credentials.ts';
import { NewPasswordField } from './new-password-field.tsx';

export function PasswordSection() {
  const { t } = useWords();
  const client = useQueryClient();
  const [present, setPresent] = useState('');
  const [next, setNext] = useState('');
  const [tokens, setTokens] = useState(false);
  const [tried, setTried] = useState(false);
  const change = useMutation({
    mutationFn: () => call('changePassword', { body: { present, password: next, tokens } }),
    onSuccess: async () => {
      setPresent('');
      setNext('');
      setTried(false);
      await client.invalidateQueries({ queryKey: keys.sessions });
      await client.invalidateQueries({ queryKey: keys.tokens });
    },
  });
  const submit = (event: FormEvent) => {
    event.preventDefault();
    setTried(true);
    if (present !== '' && isLongEnough(next)) change.mutate();
  };
  return (
    <section className="section">
      <h2>{t('password.title')}</h2>
      <p className="lead">{t('password.lead')}</p>
      <form className="form" onSubmit={submit} noValidate>
        <Field
          label={t('password.present')}
          type="password"
          name="password"
          autoComplete="current-password"
          value={present}
          onChange={setPresent}
          error={tried && present === '' ? t('account.missing.password') : null}
        />
        <NewPasswordField label={t('password.next')} value={next} onChange={setNext} wasTried={tried} />
        <Checkbox isSelected={tokens} onChange={setTokens}>
          {t('password.tokens')}
        </Checkbox>
        <ProblemNotice error={change.error} keepsTyped />
        {change.isSuccess ? <Notice tone="done">{t('password.changed')}</Notice> : null}
        <div className="row">
          <Button type="submit" isPending={change.isPending}>
            {t('password.submit')}
          </Button>
        </div>
      </form>
    </section>
  );
}
