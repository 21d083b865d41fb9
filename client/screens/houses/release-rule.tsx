import { useState } from 'react';
import { useMutation, useQueryClient } from '@tanstack/react-query';
import { mayAct } from '#domain/contract/acts';
import { call } from '../../api/call.ts';
import { keys } from '../../api/keys.ts';
import { useWords } from '../../i18n/use-words.ts';
import { Button } from '../../parts/button.tsx';
import { ReasonDialog } from '../../parts/reason-dialog.tsx';
import { useHouse } from '../../shell/use-house.ts';

/** Whether somebody may release what they alone recorded; the keeper of the record changes it, with a reason. */
export function ReleaseRule() {
  const { t } = useWords();
  const { fourEyes, role } = useHouse();
  const [asks, setAsks] = useState(false);
  return (
    <section className="section">
      <h2>{t('hold.rule.title')}</h2>
      <p>{t(fourEyes ? 'hold.rule.two' : 'hold.rule.one')}</p>
      {mayAct(role, 'rule') ? (
        <div className="row">
          <Button onPress={() => setAsks(true)}>{t(fourEyes ? 'hold.rule.toOne' : 'hold.rule.toTwo')}</Button>
        </div>
      ) : null}
      {asks ? <RuleDialog fourEyes={!fourEyes} onClose={() => setAsks(false)} /> : null}
    </section>
  );
}

/** `fourEyes`: as it is to be. */
function RuleDialog({ fourEyes, onClose }: { fourEyes: boolean; onClose: () => void }) {
  const { t } = useWords();
  const { id: house } = useHouse();
  const client = useQueryClient();
  const change = useMutation({
    mutationFn: (reason: string) =>
      call('stateReleaseRule', { params: { house }, body: { fourEyes, reason } }),
    onSuccess: async (changed) => {
      client.setQueryData(keys.house(house), changed);
      await client.invalidateQueries({ queryKey: keys.report(house) });
      onClose();
    },
  });
  return (
    <ReasonDialog
      title={t(fourEyes ? 'hold.rule.askTwo' : 'hold.rule.askOne')}
      text={t(fourEyes ? 'hold.rule.meansTwo' : 'hold.rule.meansOne')}
      yes={t(fourEyes ? 'hold.rule.yesTwo' : 'hold.rule.yesOne')}
      isPending={change.isPending}
      error={change.error}
      onYes={(reason) => change.mutate(reason)}
      onClose={onClose}
    />
  );
}
