import { useMutation, useQueryClient } from '@tanstack/react-query';
import type { TagView } from '#domain/contract/views';
import { call } from '../../api/call.ts';
import { keys } from '../../api/keys.ts';
import { useWords } from '../../i18n/use-words.ts';
import { ReasonDialog } from '../../parts/reason-dialog.tsx';
import { useHouse } from '../../shell/use-house.ts';

interface DoubtDialogProps {
  tag: Pick<TagView, 'id' | 'mark' | 'stage' | 'by'>;
  onSaid?: (reason: string) => void;
  onClose: () => void;
}

/** Doubts a tag: it counts as no record until somebody answers. */
export function DoubtDialog({ tag, onSaid, onClose }: DoubtDialogProps) {
  const { t } = useWords();
  const { id: house } = useHouse();
  const client = useQueryClient();
  const doubt = useMutation({
    mutationFn: (reason: string) => call('disputeTag', { params: { tag: tag.id }, body: { reason } }),
    onSuccess: async (_, reason) => {
      onSaid?.(reason);
      await Promise.all(
        [keys.report(house), keys.allFindings(house), keys.allSingle(house)].map((queryKey) =>
          client.invalidateQueries({ queryKey }),
        ),
      );
      onClose();
    },
  });
  return (
    <ReasonDialog
      title={t('hold.doubt.title', { mark: tag.mark, stage: t(`common.stage.${tag.stage}`) })}
      text={t('hold.doubt.text', { who: tag.by?.name ?? t('common.nobody') })}
      yes={t('hold.doubt.submit')}
      isPending={doubt.isPending}
      error={doubt.error}
      onYes={(reason) => doubt.mutate(reason)}
      onClose={onClose}
    />
  );
}
