import { memo } from 'react';
import { Link } from 'react-router';
import type { ClosingReportView } from '#domain/contract/report-views';
import type { FindingKind } from '#domain/record/findings/kinds';
import { isFirm } from '#domain/record/requirement';
import { dayIn, formatDay, formatInstant, formatList } from '../../i18n/format.ts';
import { metres, stretchWords } from '../../i18n/stretch-words.ts';
import { useWords } from '../../i18n/use-words.ts';
import { KindName } from '../../parts/kind-name.tsx';
import { LegibilityMark } from '../../parts/legibility-mark.tsx';
import { StageName } from '../../parts/stage-name.tsx';
import { useHouse } from '../../shell/use-house.ts';
import { HoldWaiver } from '../coverings/hold-waiver.tsx';
import { LAYER_WORDS } from '../coverings/layer-words.ts';
import { eachPhotoOnce } from './each-photo-once.ts';
import { knownTime } from './known-time.ts';
import { missSentence } from './miss-sentence.ts';
import { RecordFindings } from './record-findings.tsx';

export type Line = ClosingReportView['days'][number]['coverings'][number]['lines'][number];

export interface LineRowProps {
  line: Line;
  hasReading: boolean;
  isClosed: boolean;
}

/** Drawn again only where the line is another: a large house has thousands. */
export const LineRow = memo(function LineRow({ line, hasReading, isClosed }: LineRowProps) {
  const { id: house } = useHouse();
  return (
    <tr className={`report-line report-line-${line.state}`}>
      <td className="report-tick" aria-hidden="true">
        <span />
      </td>
      <th scope="row">
        <Link to={`/houses/${house}/members/${encodeURIComponent(line.mark)}`}>{line.mark}</Link>
        <span className="report-kind">
          <KindName kind={line.kind} hasReading={hasReading} />
        </span>
      </th>
      <td>{line.place}</td>
      <td>
        <StageName stage={line.least} />
        <Extent line={line} />
      </td>
      <td>
        <LineState line={line} />
        <LayerNote line={line} isClosed={isClosed} />
      </td>
      <td className="report-remark" aria-hidden="true" />
    </tr>
  );
});

/** Which part of it is hidden, and how many photos must show it, where that is not plain. */
export function Extent({ line: { hidden, views } }: { line: Line }) {
  const { t, lang } = useWords();
  return (
    <>
      {hidden?.fromMark && hidden.toMark && hidden.fromMark !== hidden.toMark ? (
        <span className="report-extent soft">{stretchWords(t, lang, hidden)}</span>
      ) : null}
      {views > 1 ? (
        <span className="report-extent soft">{t('report.stretch.views', { count: views })}</span>
      ) : null}
    </>
  );
}

/** From where it can still be photographed, or which layer hid it before. */
function LayerNote({ line: { state, before, hiddenAt, otherFace }, isClosed }: LayerNoteProps) {
  const { lang } = useWords();
  const { zone } = useHouse();
  const words = LAYER_WORDS[lang];
  if (state === 'hidden-before' && before && hiddenAt)
    return (
      <span className="report-miss">
        {words.hiddenBefore(formatDay(dayIn(zone, new Date(hiddenAt)), lang), before.name)}
      </span>
    );
  if (state !== 'gap' || !isClosed || !otherFace) return null;
  const { towards, plannedDay } = otherFace;
  const until = plannedDay === null ? '' : words.until(formatDay(plannedDay, lang));
  return (
    <span className="report-miss">
      {towards === null ? words.openOutside(until) : words.openFrom(towards, until)}
    </span>
  );
}

type LayerNoteProps = Pick<LineRowProps, 'line' | 'isClosed'>;

/** On record, but by nothing that stands by itself. The best record comes first. */
function isToBeWeighed({ state, records: [best] }: Line): boolean {
  return state === 'on-record' && best !== undefined && !isFirm(best);
}

/** Findings that are a reason of their own for which a tag does not count. */
const SAID_AS_REASON: ReadonlySet<FindingKind> = new Set<FindingKind>([
  'no-date',
  'before-first-day',
  'after-upload',
  'unreadable',
]);

function LineState({ line }: { line: Line }) {
  const { t } = useWords();
  const { id: house } = useHouse();
  const near = line.nearestMiss?.tag;
  return (
    <>
      <LineWords line={line} />
      {near ? (
        <RecordFindings findings={near.findings.filter(({ kind }) => !SAID_AS_REASON.has(kind))} />
      ) : null}
      {near ? (
        <Link
          className="report-look"
          to={`/houses/${house}/photos/${near.photo}?tag=${near.tag}`}
          aria-label={t('report.openMissNamed', { mark: line.mark })}
        >
          {t('report.openMiss')}
        </Link>
      ) : null}
      <Records line={line} />
    </>
  );
}

/** Whether a member is on record; where it is not, why, and which parts are missing. */
export function LineWords({ line }: { line: Line }) {
  const { t, lang } = useWords();
  const { zone } = useHouse();
  const miss = missSentence(t, lang, zone, line);
  const { state, waiver } = line;
  const isMissing = state === 'gap' || state === 'lost';
  return (
    <>
      <span className={isMissing ? 'act-text' : undefined}>
        {isToBeWeighed(line) ? t('report.state.weigh') : t(`report.state.${state}`)}
      </span>
      {waiver ? (
        <span className="report-miss">
          <HoldWaiver waiver={waiver} />
        </span>
      ) : null}
      {miss === '' ? null : <span className="report-miss">{miss}</span>}
      {(isMissing || waiver) && line.missing.length > 0 && line.lengthMm !== null ? (
        <span className="report-miss">
          {t('report.stretch.missing', {
            parts: formatList(
              line.missing.map((part) => stretchWords(t, lang, part)),
              lang,
            ),
            whole: metres(line.lengthMm, lang),
          })}
        </span>
      ) : null}
      <LiesUnder line={line} />
    </>
  );
}

/** What must be lifted before there can be a photo. */
function LiesUnder({ line: { liesUnder } }: { line: Line }) {
  const { t, lang } = useWords();
  const { zone } = useHouse();
  if (liesUnder === null) return null;
  const { name, since } = liesUnder;
  return (
    <span className="report-miss">
      {t('protection.report', { name, when: formatInstant(since, zone, lang) })}
    </span>
  );
}

const SHOWN = 3;

/** The best records first; more than a few prove nothing more. */
function Records({ line: { mark, records } }: { line: Line }) {
  const { t, lang } = useWords();
  const { id: house, zone } = useHouse();
  if (records.length === 0) return null;
  const seen = eachPhotoOnce(records);
  return (
    <ul className="plain-list report-records">
      {seen.slice(0, SHOWN).map((record) => {
        const { tag, photo, stage: at, legibility, findings } = record;
        const when = knownTime(t, lang, zone, record);
        const stage = t(`common.stage.${at}`);
        return (
          <li key={tag}>
            <Link
              to={`/houses/${house}/photos/${photo}?tag=${tag}`}
              aria-label={t('report.openRecord', { mark, stage, when })}
            >
              {t('report.record', { stage, when })}
            </Link>{' '}
            {legibility === 'weak' ? (
              <LegibilityMark legibility={{ verdict: legibility, reasons: [] }} />
            ) : null}
            <RecordFindings findings={findings} />
          </li>
        );
      })}
      {seen.length > SHOWN ? (
        <li className="soft">{t('report.records', { count: records.length })}</li>
      ) : null}
    </ul>
  );
}
