import type { SaidRefusal } from '#domain/verify/replay/state';
import { ToldFacts } from './told-facts.tsx';
import { saidWords, type Speech } from './told-words.ts';

export interface ToldRefusalPartProps {
  speech: Speech;
  refusal: SaidRefusal;
  /** As the covering is called at the end of the ledger. */
  now: string;
}

export function ToldRefusalPart({ speech, refusal, now }: ToldRefusalPartProps) {
  const { t } = speech;
  const { seq, name, lacking, note } = refusal;
  return (
    <section className="check-told-said">
      <h4>{t('check.told.refusal')}</h4>
      <ToldFacts
        facts={[
          [t('check.told.refusedBy'), saidWords(speech, refusal)],
          [t('check.guide.entry'), t('check.guide.entryNo', { number: seq + 1 })],
          name === now ? null : [t('check.told.calledThen'), name],
          [
            t('check.told.lacking'),
            lacking.length === 0 ? t('common.none') : <Lacking {...{ speech, lacking }} />,
          ],
          note === '' ? null : [t('check.told.note'), note],
        ]}
      />
    </section>
  );
}

function Lacking({ speech: { t }, lacking }: { speech: Speech; lacking: SaidRefusal['lacking'] }) {
  return (
    <ul className="plain-list">
      {lacking.map(({ mark, note }) => (
        <li key={mark}>{note === '' ? mark : t('check.told.gap', { mark, reason: note })}</li>
      ))}
    </ul>
  );
}
