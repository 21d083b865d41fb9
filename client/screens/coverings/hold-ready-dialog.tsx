import { useState } from 'react';
import type { Standing } from '#domain/contract/hold';
import type { CoveringView } from '#domain/contract/views';
import { call } from '../../api/call.ts';
import { useWords } from '../../i18n/use-words.ts';
import { Button } from '../../parts/button.tsx';
import { Dialog } from '../../parts/dialog.tsx';
import { ProblemNotice } from '../../parts/notice.tsx';
import { TextArea } from '../../parts/text-area.tsx';
import { useHouse } from '../../shell/use-house.ts';
import { HoldNobody } from './hold-nobody.tsx';
import { HoldRefusal } from './hold-refusal.tsx';
import { useCoveringChange } from './use-covering-change.ts';

interface HoldReadyDialogProps {
  covering: CoveringView;
  standing: Pick<Standing, 'phase'>;
  gaps: number;
  onClose: () => void;
}

/** Says that a covering is ready for inspection, with a word to whoever inspects. */
export function HoldReadyDialog({ covering, standing, gaps, onClose }: HoldReadyDialogProps) {
  const { id, name, hold } = covering;
  const { t } = useWords();
  const { id: house } = useHouse();
  const [note, setNote] = useState('');
  const ready = useCoveringChange(
    house,
    () => call('readyCovering', { params: { covering: id }, body: { note } }),
    onClose,
  );
  return (
    <Dialog title={t('hold.ready.title', { name })} isOpen onClose={onClose}>
      <form
        className="stack"
        onSubmit={(event) => {
          event.preventDefault();
          ready.mutate(undefined);
        }}
      >
        <p>{t('hold.ready.text')}</p>
        <HoldRefusal hold={hold} />
        {standing.phase === 'outrun' ? <p>{t('hold.ready.outrun')}</p> : null}
        {gaps > 0 ? <p className="act-text">{t('hold.ready.gaps', { count: gaps })}</p> : null}
        <HoldNobody />
        <TextArea
          label={t('hold.ready.note')}
          value={note}
          onChange={setNote}
          rows={2}
          maxLength={2000}
          autoFocus
        />
        <ProblemNotice error={ready.error} keepsTyped />
        <div className="row">
          <Button type="submit" look="act" isPending={ready.isPending}>
            {t('hold.ready.submit')}
          </Button>
          <Button onPress={onClose}>{t('common.cancel')}</Button>
        </div>
      </form>
    </Dialog>
  );
}
