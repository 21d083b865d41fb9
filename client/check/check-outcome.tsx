import { shakenIn } from '#domain/verify/told-since';
import type { Verdict } from '#domain/verify/verify-archive';
import type { Place } from '#domain/verify/wrong';
import { formatBytes } from '../i18n/format.ts';
import type { Language } from '../i18n/language.ts';
import type { Words } from '../i18n/words.ts';
import { Notice } from '../parts/plain-notice.tsx';
import { ToldCoverings } from './told-coverings.tsx';
import { toldTime } from './told-time.ts';
import type { CheckState } from './use-check.ts';

export interface CheckOutcomeProps {
  t: Words;
  lang: Language;
  state: Extract<CheckState, { kind: 'right' | 'wrong' }>;
}

/** Yes with what was checked, or the first thing that is wrong. */
export function CheckOutcome({ t, lang, state }: CheckOutcomeProps) {
  if (state.kind === 'right') return <RightOutcome {...{ t, lang, verdict: state.verdict }} />;
  const { code, place, params } = state.wrong;
  return (
    <Notice tone="problem">
      <p>
        <strong>{t('check.no')}</strong>
      </p>
      {place.file === '' ? null : <p className="hash">{placeWords(t, place)}</p>}
      <p className="check-sentence">{t(`check.wrong.${code}`, params)}</p>
    </Notice>
  );
}

function RightOutcome({ t, lang, verdict }: { t: Words; lang: Language; verdict: Verdict }) {
  const { name, house, zone, entries, originals, bytes, records, back, head, madeAt, paper } = verdict;
  const shaken = shakenIn(paper?.since ?? []).length;
  const facts: [string, string][] = [
    [t('check.house'), `${name} (${house})`],
    [t('check.madeAt'), toldTime(t, lang, madeAt, zone)],
    [t('check.entries'), t('check.count', { count: entries })],
    [t('check.originals'), t('check.originalsOf', { count: originals, bytes: formatBytes(bytes, lang) })],
    [t('check.records'), t('check.count', { count: records })],
    [t('check.releases'), releasesWords(t, verdict)],
  ];
  return (
    <>
      <Notice tone="done">
        <p>
          <strong>{t('check.yes')}</strong>
        </p>
        {paper ? <p>{t('check.paper.same', { count: paper.size })}</p> : null}
        {paper?.release ? (
          <p>
            {t(paper.includesRelease ? 'check.paper.included' : 'check.paper.rests', {
              release: paper.release,
            })}
          </p>
        ) : null}
      </Notice>
      {paper?.ended ? <Ended {...{ t, lang, zone, ended: paper.ended }} /> : null}
      {paper?.withdrawn ? <TakenBack {...{ t, lang, zone, withdrawn: paper.withdrawn }} /> : null}
      {shaken > 0 ? (
        <Notice tone="problem">
          <p>
            <strong>{t('check.paper.shaken', { count: shaken })}</strong>
          </p>
        </Notice>
      ) : null}
      <dl className="facts">
        {facts.map(([term, value]) => (
          <div key={term} className="facts-row">
            <dt>{term}</dt>
            <dd>{value}</dd>
          </div>
        ))}
        <div className="facts-row">
          <dt>{t('check.head')}</dt>
          <dd className="hash">{head}</dd>
        </div>
      </dl>
      {back.length > 0 ? <p>{t('check.back', { count: back.length, line: (back[0] ?? 0) + 1 })}</p> : null}
      {paper ? null : <p>{t('check.compare')}</p>}
      <ToldCoverings {...{ t, lang, verdict }} />
    </>
  );
}

function releasesWords(t: Words, { releases, takenBack }: Verdict): string {
  if (takenBack === 0) return t('check.count', { count: releases });
  return t('check.releasesOf', { count: releases, back: takenBack });
}

interface TakenBackProps {
  t: Words;
  lang: Language;
  zone: string;
  withdrawn: NonNullable<NonNullable<Verdict['paper']>['withdrawn']>;
}

/** The sheet in hand does not know it. */
function TakenBack({ t, lang, zone, withdrawn: { at, by, reason } }: TakenBackProps) {
  const who = by ?? t('check.paper.program');
  return (
    <Notice tone="problem">
      <p>
        <strong>{t('check.paper.withdrawn', { who, when: toldTime(t, lang, at, zone), reason })}</strong>
      </p>
    </Notice>
  );
}

interface EndedProps extends Pick<TakenBackProps, 't' | 'lang' | 'zone'> {
  ended: NonNullable<NonNullable<Verdict['paper']>['ended']>;
}

/** The sheet in hand does not know that, either. */
function Ended({ t, lang, zone, ended: { at, by } }: EndedProps) {
  const said = { who: by ?? t('check.paper.program'), when: toldTime(t, lang, at, zone) };
  return (
    <Notice tone="problem">
      <p>
        <strong>{t('check.paper.ended', said)}</strong>
      </p>
    </Notice>
  );
}

function placeWords(t: Words, { file, line, byte }: Place): string {
  if (line === undefined) return byte === undefined ? file : t('check.place.byte', { file, byte });
  return byte === undefined
    ? t('check.place.line', { file, line })
    : t('check.place.lineAndByte', { file, line, byte });
}
