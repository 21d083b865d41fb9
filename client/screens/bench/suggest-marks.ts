import type { MemberIndex } from '../../finding/member-index.ts';
import { markKey, type MarkKey } from '#domain/frame/mark-order';
import { nextMark } from './next-mark.ts';

/**
 * Why a mark is proposed: it is counted on from the last tag (い二 → い三); what is tagged on this photo says that it is
 * seen there; it comes after the last tag on the photo before this one; it meets the member of the last tag at its crossing (い二 → い二地貫); it follows in the
 * schedule among members of its kind; it stands on the photo before or after; it is that of the last tag.
 */
export type Why = 'next' | 'seen' | 'row' | 'near' | 'schedule' | 'before' | 'after' | 'same';

export interface Suggestion {
  readonly mark: string;
  readonly why: Why;
}

export interface Surroundings {
  /** The mark of the last tag, if any. */
  readonly last: string | null;
  /** Marks on this photo, and on the photos before and after it, each in the order in which they were said. */
  readonly here: readonly string[];
  readonly before: readonly string[];
  readonly after: readonly string[];
  /** What the drawn region likely shows by what is tagged around it, the likeliest first. */
  readonly seen: readonly string[];
}

const OFFERED = 8;
const COUNTED_ON = 100;
/** Of what the photo itself says so many stand before all else; counted on is what it does not speak against. */
const SEEN = 6;
const PLAINLY_SEEN = 3;

/** The marks that this region likely shows, the likeliest first; only such as the schedule has. */
export function suggestMarks(around: Surroundings, index: MemberIndex): Suggestion[] {
  const { last, here, before, after, seen } = around;
  const isKnown = (mark: string) => index.byMark.get(mark)?.retired === false;
  const isNew = (mark: string) => isKnown(mark) && mark !== last && !here.includes(mark);
  const next = countedOn(last, isKnown, isNew);
  const plain = seen.filter(isNew).slice(0, PLAINLY_SEEN);
  const isNextSeen = seen.length === 0 || next.some((mark) => plain.includes(mark));
  const reasons: readonly (readonly [Why, readonly string[]])[] = [
    ['next', isNextSeen ? next : []],
    ['seen', seen.filter(isNew).slice(0, SEEN)],
    ['next', next],
    ['row', afterIn(before, last)],
    ['near', atCrossing(last, index)],
    ['schedule', inSchedule(last, index, isNew)],
    ['before', before],
    ['after', after],
  ];
  const all = reasons.flatMap(([why, marks]) => marks.filter(isNew).map((mark) => ({ mark, why })));
  const unlike = all.filter(({ mark }, i) => all.findIndex((s) => s.mark === mark) === i);
  const same = last !== null && isKnown(last) ? [{ mark: last, why: 'same' as const }] : [];
  return [...unlike.slice(0, OFFERED - same.length), ...same];
}

/**
 * The one that may stand in the field unasked: counted on, or next in the row that the photo before shows. All
 * others are to be chosen, since what is placed unread must not be a guess.
 */
export function leadingMark([first]: readonly Suggestion[]): string {
  return first?.why === 'next' || first?.why === 'row' ? first.mark : '';
}

function countedOn(
  last: string | null,
  isKnown: (mark: string) => boolean,
  isNew: (mark: string) => boolean,
): string[] {
  let mark = last === null ? null : nextMark(last);
  for (let i = 0; mark !== null && isKnown(mark) && i < COUNTED_ON; i += 1) {
    if (isNew(mark)) return [mark];
    mark = nextMark(mark);
  }
  return [];
}

function afterIn(marks: readonly string[], last: string | null): readonly string[] {
  const at = last === null ? -1 : marks.lastIndexOf(last);
  return at < 0 ? [] : marks.slice(at + 1);
}

/** Members whose marks begin with the same line and number as the last one: い二, い二地貫, い二梁. */
function atCrossing(last: string | null, index: MemberIndex): string[] {
  const [line, number] = last === null ? [] : markKey(last).parts;
  if (!line || !number || line[0] === 2 || number[0] === 2) return [];
  const isThere = ({ key: { parts } }: MemberIndex['entries'][number]) =>
    isSame(parts[0], line) && isSame(parts[1], number);
  return index.entries.filter(isThere).map(({ member }) => member.mark);
}

const isSame = (a: MarkKey['parts'][number] | undefined, b: MarkKey['parts'][number]) =>
  a?.[0] === b[0] && a[1] === b[1];

function inSchedule(last: string | null, index: MemberIndex, isNew: (mark: string) => boolean): string[] {
  const kind = last === null ? undefined : index.byMark.get(last)?.kind;
  if (kind === undefined) return [];
  const at = index.entries.findIndex(({ member }) => member.mark === last);
  const next = index.entries.slice(at + 1).find(({ member }) => member.kind === kind && isNew(member.mark));
  return next ? [next.member.mark] : [];
}
