import { useQueryClient } from '@tanstack/react-query';
import { sessionEnd } from '../api/session-end.ts';
import { endSession, useSession, useSessionState } from '../api/use-session.ts';
import { useWords } from '../i18n/use-words.ts';
import { Button } from '../parts/button.tsx';
import { Notice } from '../parts/notice.tsx';

/**
 * Said on every screen when the server no longer knows whoever was signed in. It lies over the foot of the
 * window: nothing moves under the hand. Without an account the way leads to signing in, and back to here.
 */
export function SignedOutNotice() {
  const { t } = useWords();
  const client = useQueryClient();
  const account = useSession().data?.account;
  const state = useSessionState();
  if (!account || (state !== 'ended' && state !== 'other')) return null;
  const act =
    state === 'ended' ? (
      <Button look="act" onPress={() => endSession(client)}>
        {t('common.signIn')}
      </Button>
    ) : (
      <Button onPress={sessionEnd.signedIn}>{t('common.close')}</Button>
    );
  return (
    <div className="signed-out no-print">
      <Notice tone="problem" actions={act}>
        {state === 'ended' ? t('common.signedOut') : t('common.otherAccount', { name: account.name })}
      </Notice>
    </div>
  );
}
