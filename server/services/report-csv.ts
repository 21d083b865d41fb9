import { stringify } from 'csv-stringify/sync';
import { Temporal } from 'temporal-polyfill';
import type { ClosingReportView, NamedStretch } from '#domain/contract/report-views';
import { findingsToTell } from '#domain/record/findings-to-tell';
import { REPORT_WORDS, type ReportWords } from './report-words.ts';

type Covering = ClosingReportView['days'][number]['coverings'][number];
type Line = Covering['lines'][number];
type Cell = string | number;

/**
 * The closing report as a sheet, one row a hidden member, in the order of the report; a covering that
 * hides nothing yet has a row without a member. RFC 4180 in UTF-8 with a byte order mark, without which
 * Excel garbles Japanese. Times are local to `zone` (IANA; throws RangeError where it is none).
 * Of a record or nearest miss the best tag is named.
 */
export function reportCsv(report: ClosingReportView, lang: 'en' | 'ja', zone: string): string {
  const words = REPORT_WORDS[lang];
  const local = (instant: string | null) => (instant === null ? '' : localTime(instant, zone));
  const rows = report.days.flatMap(({ day, coverings }) =>
    coverings.flatMap((covering) => {
      const left = coveringCells(day, covering, words, local);
      if (covering.lines.length === 0) return [left];
      return covering.lines.map((line) => [...left, ...lineCells(line, words, local)]);
    }),
  );
  const table = [[...words.headings], ...rows].map((row) =>
    words.headings.map((_, i) => harmless(row[i] ?? '')),
  );
  return stringify(table, { bom: true, record_delimiter: 'windows' });
}

function coveringCells(
  day: string | null,
  covering: Covering,
  words: ReportWords,
  local: (instant: string | null) => string,
): Cell[] {
  return [
    day ?? '',
    covering.name,
    words.kind[covering.kind],
    covering.plannedDay ?? '',
    local(covering.closedAt),
    covering.daysLeft ?? '',
    words.phase[covering.standing.phase],
    reasonCell(covering.standing, words, local),
  ];
}

/** Why it closed without a release, or why its release was taken back; of an outrun one what it does not cover. */
function reasonCell(
  { without, takenBack, beyond }: Covering['standing'],
  words: ReportWords,
  local: (instant: string) => string,
): string {
  if (takenBack) return words.takenBack(takenBack.by?.name ?? '', local(takenBack.at), takenBack.reason);
  return without ?? beyond.join(words.and);
}

function lineCells(line: Line, words: ReportWords, local: (instant: string | null) => string): Cell[] {
  const tag = line.records[0] ?? line.nearestMiss?.tag ?? null;
  return [
    line.mark,
    line.kind,
    line.place,
    words.stage[line.least],
    words.state[line.state],
    [
      ...waiverCell(line, words, local),
      ...(line.nearestMiss?.reasons ?? []).map((reason) => words.miss[reason]),
      ...(line.liesUnder ? [words.liesUnder(line.liesUnder.name, local(line.liesUnder.since))] : []),
    ].join(words.and),
    tag ? words.stage[tag.stage] : '',
    local(tag && tag.instant),
    tag ? tag.photo : '',
    line.records.length,
    tag?.datedBy ? words.datedBy[tag.datedBy] : '',
    tag?.legibility ? words.legibility[tag.legibility] : '',
    findingCell(line.records.length > 0 ? findingsToTell(line.records) : (tag?.findings ?? []), words),
    line.views,
    line.hidden ? part(line.hidden, words) : '',
    line.lengthMm === null ? '' : metres(line.lengthMm),
    line.missing.map((stretch) => part(stretch, words)).join(words.and),
    missingLength(line),
  ];
}

/** Between which lines of the grid; where they have no names there, in metres from the start of the member. */
function part({ from, to, fromMark, toMark }: NamedStretch, { between }: ReportWords): string {
  return fromMark !== null && toMark !== null
    ? between(fromMark, toMark)
    : `${between(metres(from), metres(to))} m`;
}

/** Of what is missing whole nobody lists the parts. */
function missingLength({ state, missing, lengthMm }: Line): string {
  if (missing.length > 0) return metres(missing.reduce((sum, { from, to }) => sum + to - from, 0));
  const isMissing = state === 'gap' || state === 'lost' || state === 'waived';
  return isMissing && lengthMm !== null ? metres(lengthMm) : '';
}

function waiverCell({ waiver }: Line, words: ReportWords, local: (instant: string) => string): string[] {
  if (!waiver) return [];
  const said = words.waived(waiver.by?.name ?? '', local(waiver.at), waiver.reason);
  const { takenBack } = waiver;
  if (!takenBack) return [said];
  return [said, words.takenBack(takenBack.by?.name ?? '', local(takenBack.at), takenBack.reason)];
}

const metres = (mm: number) => (mm / 1000).toFixed(2);

function findingCell(findings: Line['records'][number]['findings'], words: ReportWords): string {
  const said = findings.map(({ kind, accepted, doubt }) => {
    if (doubt) return words.doubted(doubt, accepted);
    const name = words.finding[kind];
    return accepted ? words.accepted(name, accepted.by ?? '', accepted.reason) : name;
  });
  return [...new Set(said)].join(words.and);
}

/** Day and time to the second, as spreadsheets read it; the zone is the house's throughout. */
function localTime(instant: string, zone: string): string {
  const { year, month, day, hour, minute, second } = Temporal.Instant.from(instant).toZonedDateTimeISO(zone);
  const two = (n: number) => String(n).padStart(2, '0');
  return `${String(year)}-${two(month)}-${two(day)} ${two(hour)}:${two(minute)}:${two(second)}`;
}

/**
 * Text that a spreadsheet would run as a formula gets an apostrophe in front. Source: OWASP, CSV
 * Injection, with its full-width forms. Numbers are left as they are.
 */
function harmless(cell: Cell): Cell {
  return typeof cell === 'string' && /^[=+\-@\t\r\n＝＋－＠]/u.test(cell) ? `'${cell}` : cell;
}
