import type { ProtectionView } from '#domain/contract/protection';
import { call } from '../../api/call.ts';
import { useWords } from '../../i18n/use-words.ts';
import { ReasonDialog } from '../../parts/reason-dialog.tsx';
import { useHouse } from '../../shell/use-house.ts';
import { useProtectionChange } from './use-protection-change.ts';

export interface TakeBackDialogProps {
  protection: ProtectionView;
  /** The lifting alone, or that it ever lay there. */
  what: 'takeBack' | 'withdraw';
  onClose: () => void;
}

export function TakeBackDialog({ protection: { id, name }, what, onClose }: TakeBackDialogProps) {
  const { t } = useWords();
  const { id: house } = useHouse();
  const takeBack = useProtectionChange(
    house,
    (reason: string) =>
      call(what === 'takeBack' ? 'withdrawLifting' : 'withdrawProtection', {
        params: { protection: id },
        query: { reason },
      }),
    onClose,
  );
  return (
    <ReasonDialog
      title={t(`protection.${what}.title`, { name })}
      text={t(`protection.${what}.text`)}
      yes={t(`protection.${what}.submit`)}
      isPending={takeBack.isPending}
      error={takeBack.error}
      onYes={takeBack.mutate}
      onClose={onClose}
    />
  );
}
