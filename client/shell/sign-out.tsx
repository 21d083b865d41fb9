import { useMutation, useQueryClient } from '@tanstack/react-query';
import { useNavigate } from 'react-router';
import { call } from '../api/call.ts';
import { noteAccount } from '../api/noted-account.ts';
import { sessionEnd } from '../api/session-end.ts';
import { endSession } from '../api/use-session.ts';
import { problemSentence } from '../i18n/problem-sentence.ts';
import { useWords } from '../i18n/use-words.ts';
import { leaveThen } from '../parts/unsaved.tsx';

export function SignOut() {
  const { t, lang } = useWords();
  const client = useQueryClient();
  const navigate = useNavigate();
  const signOut = useMutation({
    mutationFn: async () => {
      // What is still being asked would be answered by 'not signed in', which nobody need be told now.
      sessionEnd.leave();
      await client.cancelQueries();
      return call('signOut');
    },
    onError: () => sessionEnd.signedIn(),
    onSuccess: async () => {
      // Nothing of the houses may stay in memory for the next person at this device.
      await navigate('/sign-in');
      client.clear();
      noteAccount(null);
      endSession(client);
    },
  });
  return (
    <>
      <button type="button" className="button button-quiet" onClick={() => leaveThen(() => signOut.mutate())}>
        {t('common.signOut')}
      </button>
      {signOut.isError ? <span role="alert">{problemSentence(t, lang, signOut.error)}</span> : null}
    </>
  );
}
