import { useState } from 'react';
import { useMutation, useQueryClient } from '@tanstack/react-query';
import { useNavigate } from 'react-router';
import { call } from '../../api/call.ts';
import { leaveSession } from '../../api/leave-session.ts';
import { useWords } from '../../i18n/use-words.ts';
import { Checkbox } from '../../parts/checkbox.tsx';
import { Confirm } from '../../parts/confirm.tsx';

export function EndSessions({ onClose }: { onClose: () => void }) {
  const { t } = useWords();
  const client = useQueryClient();
  const navigate = useNavigate();
  const [tokens, setTokens] = useState(false);
  const end = useMutation(
    leaveSession(
      client,
      () => call('endSessions', { query: { tokens: tokens ? '1' : '0' } }),
      () => navigate('/sign-in'),
    ),
  );
  return (
    <Confirm
      title={t('password.sessions.endTitle')}
      text={t('password.sessions.endText')}
      yes={t('password.sessions.end')}
      isOpen
      isPending={end.isPending}
      error={end.error}
      onYes={() => end.mutate()}
      onClose={onClose}
    >
      <Checkbox isSelected={tokens} onChange={setTokens}>
        {t('password.tokens')}
      </Checkbox>
    </Confirm>
  );
}
