import { useMutation, useQueryClient } from '@tanstack/react-query';
import { useNavigate } from 'react-router';
import { call } from '../api/call.ts';
import { leaveSession } from '../api/leave-session.ts';
import { problemSentence } from '../i18n/problem-sentence.ts';
import { useWords } from '../i18n/use-words.ts';
import { leaveThen } from '../parts/unsaved.tsx';

export function SignOut() {
  const { t, lang } = useWords();
  const client = useQueryClient();
  const navigate = useNavigate();
  const signOut = useMutation(
    leaveSession(
      client,
      () => call('signOut'),
      () => navigate('/sign-in'),
    ),
  );
  return (
    <>
      <button type="button" className="button button-quiet" onClick={() => leaveThen(() => signOut.mutate())}>
        {t('common.signOut')}
      </button>
      {signOut.isError ? <span role="alert">{problemSentence(t, lang, signOut.error)}</span> : null}
    </>
  );
}
