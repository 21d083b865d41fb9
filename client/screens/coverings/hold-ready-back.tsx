import type { CoveringView } from '#domain/contract/views';
import { call } from '../../api/call.ts';
import { useWords } from '../../i18n/use-words.ts';
import { ReasonDialog } from '../../parts/reason-dialog.tsx';
import { useHouse } from '../../shell/use-house.ts';
import { useCoveringChange } from './use-covering-change.ts';

export function HoldReadyBack({ covering, onClose }: { covering: CoveringView; onClose: () => void }) {
  const { t } = useWords();
  const { id: house } = useHouse();
  const back = useCoveringChange(
    house,
    (reason: string) => call('withdrawReady', { params: { covering: covering.id }, query: { reason } }),
    onClose,
  );
  return (
    <ReasonDialog
      title={t('hold.back.title', { name: covering.name })}
      text={t('hold.back.text')}
      yes={t('hold.back.submit')}
      isPending={back.isPending}
      error={back.error}
      onYes={(reason) => back.mutate(reason)}
      onClose={onClose}
    />
  );
}
