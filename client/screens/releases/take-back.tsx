import { useState } from 'react';
import { useMutation, useQueryClient } from '@tanstack/react-query';
import type { ReleaseView } from '#domain/contract/review-views';
import { call } from '../../api/call.ts';
import { keys } from '../../api/keys.ts';
import { formatInstant } from '../../i18n/format.ts';
import { useWords } from '../../i18n/use-words.ts';
import { Button } from '../../parts/button.tsx';
import { ReasonDialog } from '../../parts/reason-dialog.tsx';

/** The button, and the question that it asks first. */
export function TakeBack({ release: { id, house, covering } }: { release: ReleaseView }) {
  const { t, lang } = useWords();
  const { closedAt, closedUnder } = covering;
  const client = useQueryClient();
  const [asks, setAsks] = useState(false);
  const takeBack = useMutation({
    mutationFn: (reason: string) => call('withdrawRelease', { params: { release: id }, query: { reason } }),
    onSuccess: async (now) => {
      client.setQueryData(keys.release(house.id, id), now);
      await client.invalidateQueries({ queryKey: keys.coverings(house.id) });
      setAsks(false);
    },
  });
  return (
    <>
      <Button onPress={() => setAsks(true)}>{t('releases.takeBack.open')}</Button>
      {asks ? (
        <ReasonDialog
          title={t('releases.takeBack.title', { name: covering.name })}
          text={
            closedUnder === id && closedAt !== null
              ? t('releases.takeBack.textClosed', { when: formatInstant(closedAt, house.zone, lang) })
              : t('releases.takeBack.text')
          }
          yes={t('releases.takeBack.submit')}
          isPending={takeBack.isPending}
          error={takeBack.error}
          onYes={takeBack.mutate}
          onClose={() => setAsks(false)}
        />
      ) : null}
    </>
  );
}
