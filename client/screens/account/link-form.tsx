import { useState, type FormEvent } from 'react';
import { useMutation, useQueryClient } from '@tanstack/react-query';
import { useNavigate } from 'react-router';
import { call } from '../../api/call.ts';
import { keys } from '../../api/keys.ts';
import { useWords } from '../../i18n/use-words.ts';
import { Button } from '../../parts/button.tsx';
import { Field } from '../../parts/field.tsx';
import { ProblemNotice } from '../../parts/notice.tsx';
import { isLongEnough, looksLikeEmail } from './credentials.ts';
import { NewPasswordField } from './new-password-field.tsx';

/** `invited`: the address that the link was made for, if any. */
export function LinkForm({ link, invited }: { link: string; invited: string | null }) {
  const { t } = useWords();
  const client = useQueryClient();
  const navigate = useNavigate();
  const [name, setName] = useState('');
  const [email, setEmail] = useState(invited ?? '');
  const [password, setPassword] = useState('');
  const [tried, setTried] = useState(false);
  const make = useMutation({
    mutationFn: () =>
      call('useLink', { params: { link }, body: { name: name.trim(), email: email.trim(), password } }),
    onSuccess: async ({ house }) => {
      await client.invalidateQueries({ queryKey: keys.session });
      await navigate(house === null ? '/' : `/houses/${house}`, { replace: true });
    },
  });
  const submit = (event: FormEvent) => {
    event.preventDefault();
    setTried(true);
    if (name.trim() !== '' && looksLikeEmail(email) && isLongEnough(password)) make.mutate();
  };
  return (
    <form className="form" onSubmit={submit} noValidate>
      <Field
        label={t('account.link.name')}
        description={t('account.link.nameHint')}
        name="name"
        autoComplete="name"
        maxLength={100}
        value={name}
        onChange={setName}
        error={tried && name.trim() === '' ? t('account.missing.name') : null}
      />
      {invited === null ? (
        <Field
          label={t('account.signIn.email')}
          type="email"
          name="email"
          autoComplete="username"
          value={email}
          onChange={setEmail}
          error={tried && !looksLikeEmail(email) ? t('account.missing.email') : null}
        />
      ) : (
        <Invited email={invited} />
      )}
      <NewPasswordField
        label={t('account.signIn.password')}
        value={password}
        onChange={setPassword}
        wasTried={tried}
      />
      <ProblemNotice error={make.error} keepsTyped />
      <div className="row">
        <Button type="submit" look="act" isPending={make.isPending}>
          {t('account.link.submit')}
        </Button>
      </div>
    </form>
  );
}

/** Said already by whoever invited; what keeps passwords is told of it, too. */
function Invited({ email }: { email: string }) {
  const { t } = useWords();
  return (
    <p className="field">
      <span className="field-label">{t('account.signIn.email')}</span>
      <span>{email}</span>
      <input type="hidden" name="username" autoComplete="username" value={email} readOnly />
    </p>
  );
}
