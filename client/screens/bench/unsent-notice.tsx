import { Link } from 'react-router';
import { sentenceOf } from '../../i18n/problem-sentence.ts';
import { useWords } from '../../i18n/use-words.ts';
import { Button } from '../../parts/button.tsx';
import { Notice } from '../../parts/notice.tsx';
import type { Unsent } from './outbox.ts';
import type { OutboxInUse } from './use-outbox.ts';

export interface UnsentNoticeProps {
  house: string;
  /** The photo on the bench, if any: no way needs to be shown to it. */
  photo: string | null;
  inUse: OutboxInUse;
}

/** Says plainly what the server has not heard yet, and what it does not want to hear. */
export function UnsentNotice({
  house,
  photo,
  inUse: { entries, outbox, speaker, flush },
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
        />
      ))}
      {waiting.length > 0 ? (
        <Notice actions={<Button onPress={flush}>{t('bench.unsent.now')}</Button>}>
          {t('bench.unsent.count', { count: waiting.length })}
          {outbox.isKept() ? null : <p className="act-text">{t('bench.unsent.notKept')}</p>}
        </Notice>
      ) : null}
      {others > 0 ? <Notice>{t('bench.unsent.otherPerson', { count: others })}</Notice> : null}
    </>
  );
}

function Refused(props: { unsent: Unsent; address: string | null; onDrop: () => void }) {
  const { t, lang } = useWords();
  const { refused, write } = props.unsent;
  if (refused === null) return null;
  const { mark, stage } = write.facts;
  return (
    <Notice
      tone="problem"
      actions={
        <Button aria-label={t('bench.unsent.dropNamed', { mark })} onPress={props.onDrop}>
          {t('bench.unsent.drop')}
        </Button>
      }
    >
      <p>{t('bench.unsent.refused', { mark, stage: t(`common.stage.${stage}`) })}</p>
      <p>{sentenceOf(t, lang, refused)}</p>
      {props.address === null ? null : <Link to={props.address}>{t('bench.unsent.look')}</Link>}
    </Notice>
  );
}
