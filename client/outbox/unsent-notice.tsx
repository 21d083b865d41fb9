import { Link } from 'react-router';
import { sentenceOf } from '../i18n/problem-sentence.ts';
import { useWords } from '../i18n/use-words.ts';
import { Button } from '../parts/button.tsx';
import { Notice } from '../parts/notice.tsx';
import type { Unsent } from './outbox.ts';
import type { OutboxInUse } from './use-outbox.ts';

export interface UnsentNoticeProps {
  house: string;
  /** The photo on the bench, if any: no way needs to be shown to it. */
  photo: string | null;
  inUse: OutboxInUse;
  /** Only where the drawing of the photo can be taken up. */
  onPutRight?: (refused: Unsent) => void;
}

/** Says plainly what the server has not heard yet, and what it does not want to hear. */
export function UnsentNotice({
  house,
  photo,
  inUse: { entries, outbox, speaker, flush, pause },
  onPutRight,
}: UnsentNoticeProps) {
  const { t } = useWords();
  const mine = entries.filter(({ by }) => by === speaker.id);
  const waiting = mine.filter(({ refused }) => refused === null);
  const others = entries.length - mine.length;
  return (
    <>
      {mine.map((unsent) => (
        <Refused
          key={unsent.key}
          unsent={unsent}
          address={unsent.photo === photo ? null : `/houses/${house}/photos/${unsent.photo}`}
          onDrop={() => outbox.drop(unsent.key)}
          onPutRight={() => onPutRight?.(unsent)}
        />
      ))}
      {waiting.length > 0 && pause !== null ? (
        <Waiting count={waiting.length} inUse={{ outbox, flush, pause }} />
      ) : null}
      {others > 0 ? <Notice>{t('bench.unsent.otherPerson', { count: others })}</Notice> : null}
    </>
  );
}

function Waiting(props: { count: number; inUse: Pick<OutboxInUse, 'outbox' | 'flush' | 'pause'> }) {
  const { t } = useWords();
  const { count } = props;
  const { outbox, flush, pause } = props.inUse;
  const isSignedOut = pause === 'signed-out';
  return (
    <Notice actions={isSignedOut ? null : <Button onPress={flush}>{t('bench.unsent.now')}</Button>}>
      {isSignedOut ? t('bench.unsent.signedOut', { count }) : t('bench.unsent.count', { count })}
      {outbox.isKept() ? null : <p className="act-text">{t('bench.unsent.notKept')}</p>}
    </Notice>
  );
}

interface RefusedProps {
  unsent: Unsent;
  /** Where its photo is, when that is not the one on the bench. */
  address: string | null;
  onDrop: () => void;
  onPutRight: () => void;
}

function Refused(props: RefusedProps) {
  const { t, lang } = useWords();
  const { refused, write } = props.unsent;
  if (refused === null) return null;
  const { mark, stage } = write.facts;
  return (
    <Notice
      tone="problem"
      actions={
        <>
          {props.address === null && write.is !== 'withdraw' ? (
            <Button aria-label={t('bench.unsent.putRightNamed', { mark })} onPress={props.onPutRight}>
              {t('bench.unsent.putRight')}
            </Button>
          ) : null}
          <Button aria-label={t('bench.unsent.dropNamed', { mark })} onPress={props.onDrop}>
            {t('bench.unsent.drop')}
          </Button>
        </>
      }
    >
      <p>{t('bench.unsent.refused', { mark, stage: t(`common.stage.${stage}`) })}</p>
      <p>{sentenceOf(t, lang, refused)}</p>
      {props.address === null ? null : <Link to={props.address}>{t('bench.unsent.look')}</Link>}
    </Notice>
  );
}
