import { useState, type FormEvent } from 'react';
import { useMutation, useQueryClient } from '@tanstack/react-query';
import { Navigate, useLocation } from 'react-router';
import { call } from '../../api/call.ts';
import { beginSession, useSession, useSessionState } from '../../api/use-session.ts';
import { useWords } from '../../i18n/use-words.ts';
import { Button } from '../../parts/button.tsx';
import { Field } from '../../parts/field.tsx';
import { Notice, ProblemNotice } from '../../parts/notice.tsx';
import { Page } from '../../parts/page.tsx';
import { cameFrom } from './came-from.ts';
import { looksLikeEmail } from './credentials.ts';

export function SignInScreen() {
  const { t } = useWords();
  const client = useQueryClient();
  const location = useLocation();
  const session = useSession();
  const isBack = useSessionState() === 'ended';
  const [email, setEmail] = useState('');
  const [password, setPassword] = useState('');
  const [tried, setTried] = useState(false);
  const signIn = useMutation({
    mutationFn: () => call('signIn', { body: { email: email.trim(), password } }),
    onSuccess: (answer) => beginSession(client, answer),
  });
  const submit = (event: FormEvent) => {
    event.preventDefault();
    setTried(true);
    if (looksLikeEmail(email) && password !== '') signIn.mutate();
  };
  if (session.data?.account) return <Navigate to={cameFrom(location.state)} replace />;
  return (
    <Page title={t('account.signIn.title')} lead={t('account.signIn.lead')}>
      {isBack ? <Notice>{t('account.signIn.again')}</Notice> : null}
      <form className="form" onSubmit={submit} noValidate>
        <Field
          label={t('account.signIn.email')}
          type="email"
          name="email"
          autoComplete="username"
          value={email}
          onChange={setEmail}
          error={tried && !looksLikeEmail(email) ? t('account.missing.email') : null}
        />
        <Field
          label={t('account.signIn.password')}
          type="password"
          name="password"
          autoComplete="current-password"
          value={password}
          onChange={setPassword}
          error={tried && password === '' ? t('account.missing.password') : null}
        />
        <ProblemNotice error={signIn.error} keepsTyped />
        <div className="row">
          <Button type="submit" look="act" isPending={signIn.isPending}>
            {t('account.signIn.submit')}
          </Button>
        </div>
      </form>
      <p className="lead">{t('account.signIn.lost')}</p>
      <p className="lead">{t('account.signIn.noAccount')}</p>
    </Page>
  );
}
