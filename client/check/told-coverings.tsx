import { toldZone } from '#domain/record/sheet/told-zone';
import type { ToldCovering } from '#domain/verify/told-coverings';
import type { Verdict } from '#domain/verify/verify-archive';
import type { Language } from '../i18n/language.ts';
import type { Words } from '../i18n/words.ts';
import { ToldClosingPart } from './told-closing.tsx';
import { ToldRefusalPart } from './told-refusal.tsx';
import { ToldReleasePart } from './told-release.tsx';
import type { Speech } from './told-words.ts';

export interface ToldCoveringsProps {
  t: Words;
  lang: Language;
  verdict: Pick<Verdict, 'told' | 'zone' | 'madeAt' | 'paper'>;
}

/** Releases, refusals and closings as the ledger says them: what the pages of the archive say, nothing vouches for. */
export function ToldCoverings({ t, lang, verdict }: ToldCoveringsProps) {
  const { told, zone, madeAt, paper } = verdict;
  const named = paper?.release ?? null;
  const isNamed = ({ releases }: ToldCovering) => releases.some(({ release }) => release === named);
  const { name, offset } = toldZone(zone, lang, madeAt);
  return (
    <section className="check-told" aria-labelledby="check-told">
      <h2 id="check-told">{t('check.told.title')}</h2>
      <p>{t('check.told.lead', { zone: name, offset })}</p>
      <p>{t('check.told.pages')}</p>
      {told.some(({ releases }) => releases.length > 0) ? <p>{t('check.told.sinceOnly')}</p> : null}
      {told.length === 0 ? <p>{t('check.told.none')}</p> : null}
      {[...told.filter(isNamed), ...told.filter((covering) => !isNamed(covering))].map((covering) => (
        <CoveringPart key={covering.covering} {...{ covering, named }} speech={{ t, lang, zone }} />
      ))}
    </section>
  );
}

interface CoveringPartProps {
  speech: Speech;
  covering: ToldCovering;
  named: string | null;
}

function CoveringPart({ speech, covering, named }: CoveringPartProps) {
  const { name, releases, refusals, closings } = covering;
  const parts = [
    ...releases.map((release) => ({
      seq: release.seq,
      part: <ToldReleasePart {...{ speech, release, now: name }} isNamed={release.release === named} />,
    })),
    ...refusals.map((refusal) => ({
      seq: refusal.seq,
      part: <ToldRefusalPart {...{ speech, refusal, now: name }} />,
    })),
    ...closings.map((closing) => ({
      seq: closing.seq,
      part: <ToldClosingPart {...{ speech, closing, covering }} />,
    })),
  ].sort((one, other) => one.seq - other.seq);
  return (
    <section className="check-told-covering">
      <h3>{name}</h3>
      {parts.map(({ seq, part }) => (
        <div key={seq}>{part}</div>
      ))}
    </section>
  );
}
