import { useState } from 'react';
import { useMutation, useQueryClient } from '@tanstack/react-query';
import { useNavigate } from 'react-router';
import { call } from '../../api/call.ts';
import { keys } from '../../api/keys.ts';
import { useWords } from '../../i18n/use-words.ts';
import { Button } from '../../parts/button.tsx';
import { ReasonDialog } from '../../parts/reason-dialog.tsx';
import { useHouse } from '../../shell/use-house.ts';

export interface RemoveTermProps {
  term: string;
  name: string;
  /** A kind of the program keeps its page. */
  isBuiltIn: boolean;
}

export function RemoveTerm({ term, name, isBuiltIn }: RemoveTermProps) {
  const { t } = useWords();
  const { id: house } = useHouse();
  const client = useQueryClient();
  const navigate = useNavigate();
  const [isAsking, setIsAsking] = useState(false);
  const remove = useMutation({
    mutationFn: (reason: string) => call('removeTerm', { params: { house, term }, query: { reason } }),
    onSuccess: async () => {
      setIsAsking(false);
      // Its page is gone, unless the kind came with the program.
      if (!isBuiltIn) await navigate(`/houses/${house}/lexicon`);
      await client.invalidateQueries({ queryKey: keys.allOf(house) });
    },
  });
  return (
    <>
      <Button onPress={() => setIsAsking(true)}>{t('lexicon.remove')}</Button>
      {isAsking ? (
        <ReasonDialog
          title={t('lexicon.removeTitle', { name })}
          text={t('lexicon.removeText')}
          yes={t('lexicon.remove')}
          isPending={remove.isPending}
          error={remove.error}
          onYes={(reason) => remove.mutate(reason)}
          onClose={() => setIsAsking(false)}
        />
      ) : null}
    </>
  );
}
