import { useState } from 'react';
import type { Standing } from '#domain/contract/hold';
import type { CoveringView } from '#domain/contract/views';
import { call } from '../../api/call.ts';
import { useWords } from '../../i18n/use-words.ts';
import { Button } from '../../parts/button.tsx';
import { Checkbox } from '../../parts/checkbox.tsx';
import { Dialog } from '../../parts/dialog.tsx';
import { ProblemNotice } from '../../parts/notice.tsx';
import { QueryState } from '../../parts/query-state.tsx';
import { TextArea } from '../../parts/text-area.tsx';
import { useHouse } from '../../shell/use-house.ts';
import { useReport } from '../report/use-report.ts';
import {
  acceptingNothing,
  findCovering,
  leftByClosing,
  lostByClosing,
  weighedByClosing,
  whenFault,
  type CoveringLine,
  type When,
} from './closing-preview.ts';
import { ClosingRelease, isForLackOfRelease, isReleasedAt } from './closing-release.tsx';
import { ClosingReleaseWaived } from './closing-release-waived.tsx';
import { ClosingWhen } from './closing-when.tsx';
import { LossList } from './loss-list.tsx';
import { standingOf } from './standing-of.ts';
import { useCoveringChange } from './use-covering-change.ts';
import { waivedByReason } from './waived-by-reason.ts';
import { WeighList } from './weigh-list.tsx';

interface CloseDialogProps {
  covering: CoveringView;
  onClose: () => void;
}

/** Says that a covering has closed; before that, what would be lost by it, and what is to be weighed. */
export function CloseDialog({ covering, onClose }: CloseDialogProps) {
  const { t } = useWords();
  const { id: house } = useHouse();
  const report = useReport(house);
  return (
    <Dialog title={t('coverings.close.title', { name: covering.name })} isOpen onClose={onClose}>
      <p>{t('coverings.close.text')}</p>
      <QueryState query={report}>
        {(all) => (
          <CloseForm
            covering={covering}
            onClose={onClose}
            lines={findCovering(all, covering.id)?.lines ?? []}
            standing={standingOf(covering, all)}
            asOf={all.asOf}
          />
        )}
      </QueryState>
    </Dialog>
  );
}

function CloseForm({
  covering,
  onClose,
  lines,
  standing,
  asOf,
}: CloseDialogProps & { lines: CoveringLine[]; standing: Standing; asOf: string }) {
  const { t } = useWords();
  const { id: house } = useHouse();
  const [when, setWhen] = useState<When>({ is: 'now' });
  const [note, setNote] = useState('');
  const [reason, setReason] = useState('');
  const [isForLess, setIsForLess] = useState(false);
  const [knows, setKnows] = useState(false);
  const [wasTried, setWasTried] = useState(false);
  const closedAt = when.is === 'now' ? null : (when.time?.instant ?? null);
  const hasRelease = isReleasedAt(covering, closedAt);
  const isReleased = hasRelease && !isForLess && standing.phase !== 'outrun';
  const withoutRelease = isReleased ? null : reason.trim();
  const close = useCoveringChange(
    house,
    () =>
      call('closeCovering', { params: { covering: covering.id }, body: { closedAt, note, withoutRelease } }),
    onClose,
  );
  const judged = hasRelease ? lines : acceptingNothing(lines);
  const lost = lostByClosing(judged, closedAt ?? asOf);
  const left = leftByClosing(judged, closedAt ?? asOf).length;
  const isReady = () =>
    whenFault(when, new Date()) === null && (lost.length === 0 || knows) && withoutRelease !== '';
  return (
    <form
      className="stack coverings-close"
      onSubmit={(event) => {
        event.preventDefault();
        setWasTried(true);
        if (!isReady()) return;
        close.mutate(undefined, { onError: (error) => setIsForLess(isForLackOfRelease(error)) });
      }}
    >
      <ClosingWhen when={when} wasTried={wasTried} onChange={setWhen} />
      <ClosingRelease
        hold={covering.hold}
        beyond={hasRelease ? standing.beyond : []}
        isReleased={isReleased}
        reason={reason}
        isShort={wasTried && withoutRelease === ''}
        onChange={setReason}
      />
      <TextArea label={t('coverings.close.note')} value={note} onChange={setNote} rows={2} maxLength={2000} />
      <ClosingReleaseWaived lines={judged} isAll={lost.length + left === 0} />
      {lost.length + left === 0 && waivedByReason(judged).length > 0 ? null : (
        <LossList lines={lost} left={left} />
      )}
      {lost.length > 0 ? (
        <>
          <Checkbox isSelected={knows} onChange={setKnows}>
            {t('coverings.close.agree')}
          </Checkbox>
          {wasTried && !knows ? (
            <p role="alert" className="field-error">
              {t('coverings.close.needAgree')}
            </p>
          ) : null}
        </>
      ) : null}
      <WeighList weighed={weighedByClosing(judged, closedAt ?? asOf)} />
      <ProblemNotice error={close.error} keepsTyped />
      <div className="row">
        <Button type="submit" look={lost.length > 0 ? 'danger' : 'act'} isPending={close.isPending}>
          {t('coverings.close.submit')}
        </Button>
        <Button onPress={onClose}>{t('common.cancel')}</Button>
      </div>
    </form>
  );
}
