import type { ReleasedMember } from '../contract/hold.ts';
import type { ReleaseChangeView } from '../contract/review-views.ts';
import type { ReportLine } from './report-line.ts';
import { without, type Stretch } from './stretches.ts';

/** Lines that a release has to speak of: a retired member is hidden by nothing. */
export function linesToRelease<L extends Pick<ReportLine, 'state'>>(lines: readonly L[]): L[] {
  return lines.filter(({ state }) => state !== 'retired');
}

/** Whether a line may be released only by a waiver. What an earlier layer had hidden is waived there if anywhere. */
export function needsWaiver({ state }: Pick<ReportLine, 'state'>): boolean {
  return state === 'gap' || state === 'lost' || state === 'waived';
}

/** A line as the release keeps it; one that is waived keeps what was missing of it. */
export function releasedMember(line: ReportLine): ReleasedMember {
  const { mark, least, views, hidden, records, missing } = line;
  return {
    mark,
    least,
    views,
    stretch: hidden && plain(hidden),
    state: releasedAs(line),
    missing: needsWaiver(line) ? missing.map(plain) : [],
    tags: records.map(({ tag }) => tag),
  };
}

function releasedAs(line: ReportLine): ReleasedMember['state'] {
  if (line.state === 'hidden-before') return 'hidden-before';
  return needsWaiver(line) ? 'waived' : 'on-record';
}

/**
 * What a person has alone recorded: on record with all tags, and not without the person's own. `all` and
 * `others` are the lines of one covering, made of all tags and of those of everybody else.
 */
export function recordedAlone(all: readonly ReportLine[], others: readonly ReportLine[]): string[] {
  const byOthers = new Set(others.filter(({ state }) => state === 'on-record').map(({ mark }) => mark));
  return all
    .filter(({ state, mark }) => state === 'on-record' && !byOthers.has(mark))
    .map(({ mark }) => mark);
}

export interface HiddenNow {
  readonly mark: string;
  readonly stretch: Stretch | null;
}

/** The marks of which more is hidden now than was released. */
export function hiddenBeyond(released: readonly HiddenNow[], now: readonly HiddenNow[]): string[] {
  const before = new Map<string, Stretch | null>(released.map(({ mark, stretch }) => [mark, stretch]));
  return now.filter(({ mark, stretch }) => isBeyond(before.get(mark), stretch)).map(({ mark }) => mark);
}

/**
 * The marks of which a release does not speak as they stand now, in the order of the lines: more of them is hidden, or
 * what was on record of them counts no more. With one of them it is no word that the covering may close.
 */
export function outrunBy(
  released: readonly HiddenNow[],
  lines: readonly Pick<ReportLine, 'mark' | 'state' | 'hidden'>[],
): string[] {
  const now = linesToRelease(lines);
  const beyond = new Set(
    hiddenBeyond(
      released,
      now.map(({ mark, hidden }) => ({ mark, stretch: hidden })),
    ),
  );
  return now
    .filter(({ mark, state }) => beyond.has(mark) || state === 'gap' || state === 'lost')
    .map(({ mark }) => mark);
}

/**
 * `released` undefined: not at all. null: all of the member, in either; of a part nobody can tell whether it is as
 * much as all, once the member's length is not known.
 */
function isBeyond(released: Stretch | null | undefined, now: Stretch | null): boolean {
  if (released === undefined) return true;
  if (released === null) return false;
  return now === null || without([now], [released]).length > 0;
}

/**
 * What is otherwise now than in the release, by member in its order, then what is new in the order of the
 * report. It alters nothing of the release.
 */
export function changesSince(
  released: readonly ReleasedMember[],
  now: readonly ReportLine[],
): ReleaseChangeView[] {
  const lines = new Map<string, ReportLine>(linesToRelease(now).map((line) => [line.mark, line]));
  const known = new Set(released.map(({ mark }) => mark));
  const changed = released.flatMap((member) => changeOf(member, lines.get(member.mark)));
  const fresh = [...lines.values()]
    .filter(({ mark }) => !known.has(mark))
    .map(({ mark, records }): ReleaseChangeView => ({
      mark,
      what: 'hidden-since',
      gone: [],
      come: records.map(({ tag }) => tag),
    }));
  return [...changed, ...fresh];
}

function changeOf(member: ReleasedMember, line: ReportLine | undefined): ReleaseChangeView[] {
  const { mark, tags } = member;
  if (!line) return [{ mark, what: 'hidden-no-more', gone: [], come: [] }];
  const counting = line.records.map(({ tag }) => tag);
  const gone = tags.filter((tag) => !counting.includes(tag));
  const come = counting.filter((tag) => !tags.includes(tag));
  if (isBeyond(member.stretch, line.hidden)) return [{ mark, what: 'more-hidden', gone, come }];
  return gone.length + come.length > 0 ? [{ mark, what: 'records', gone, come }] : [];
}

const plain = ({ from, to }: Stretch): Stretch => ({ from, to });
