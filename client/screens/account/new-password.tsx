import { useState, type FormEvent } from 'react';
import { useMutation, useQueryClient } from '@tanstack/react-query';
import { useNavigate } from 'react-router';
import type { LinkView } from '#domain/contract/views';
import { call } from '../../api/call.ts';
import { beginSession } from '../../api/use-session.ts';
import { useWords } from '../../i18n/use-words.ts';
import { Button } from '../../parts/button.tsx';
import { Notice, ProblemNotice } from '../../parts/notice.tsx';
import { Page } from '../../parts/page.tsx';
import { isLongEnough } from './credentials.ts';
import { NewPasswordField } from './new-password-field.tsx';

/** For whoever has lost their password: who made the link, and what it ends. */
export function NewPassword({ link, facts: { by, email } }: { link: string; facts: LinkView }) {
  const { t } = useWords();
  const client = useQueryClient();
  const navigate = useNavigate();
  const [password, setPassword] = useState('');
  const [tried, setTried] = useState(false);
  const renew = useMutation({
    mutationFn: () => call('renewPassword', { params: { link }, body: { password } }),
    onSuccess: async (session) => {
      beginSession(client, session);
      await navigate('/', { replace: true });
    },
  });
  const submit = (event: FormEvent) => {
    event.preventDefault();
    setTried(true);
    if (isLongEnough(password)) renew.mutate();
  };
  const account = { email: email ?? '' };
  return (
    <Page title={t('password.link.title')}>
      <Notice>
        {by === null
          ? t('password.link.byProgram', account)
          : t('password.link.by', { ...account, name: by })}
      </Notice>
      <p className="lead">{t('password.link.ends')}</p>
      <form className="form" onSubmit={submit} noValidate>
        <input type="hidden" name="username" autoComplete="username" value={account.email} readOnly />
        <NewPasswordField
          label={t('password.next')}
          value={password}
          onChange={setPassword}
          wasTried={tried}
        />
        <ProblemNotice error={renew.error} keepsTyped />
        <div className="row">
          <Button type="submit" look="act" isPending={renew.isPending}>
            {t('password.link.submit')}
          </Button>
        </div>
      </form>
    </Page>
  );
}
