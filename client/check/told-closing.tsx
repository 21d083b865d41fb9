import type { SaidClosing } from '#domain/verify/replay/state';
import type { ToldCovering } from '#domain/verify/told-coverings';
import { formatInstant } from '../i18n/format.ts';
import { ToldFacts } from './told-facts.tsx';
import { placedWords, saidWords, type Speech } from './told-words.ts';

export interface ToldClosingPartProps {
  speech: Speech;
  closing: SaidClosing;
  covering: ToldCovering;
}

export function ToldClosingPart({ speech, closing, covering }: ToldClosingPartProps) {
  const { t, lang, zone } = speech;
  const { seq, closedAt, takenBack, note, name } = closing;
  return (
    <section className="check-told-said">
      <h4>
        {t('check.told.closing')}{' '}
        {takenBack ? <span className="act-text">{t('check.told.takenBack')}</span> : null}
      </h4>
      <ToldFacts
        facts={[
          [t('check.told.closedAt'), formatInstant(closedAt, zone, lang)],
          [t('check.told.saidBy'), saidWords(speech, closing)],
          takenBack && [
            t('check.told.takenBackBy'),
            t('check.told.withReason', { said: placedWords(speech, takenBack), reason: takenBack.reason }),
          ],
          [t('check.guide.entry'), t('check.guide.entryNo', { number: seq + 1 })],
          name === covering.name ? null : [t('check.told.calledThen'), name],
          [t('check.told.release'), underWords(speech, closing, covering)],
          note === '' ? null : [t('check.told.note'), note],
        ]}
      />
    </section>
  );
}

function underWords({ t }: Speech, { release, without }: SaidClosing, { releases }: ToldCovering): string {
  if (release === null)
    return without === null ? t('check.told.unsaid') : t('check.told.without', { reason: without });
  const given = releases.find((one) => one.release === release);
  return t(given?.takenBack ? 'check.told.underTakenBack' : 'check.told.under', { release });
}
