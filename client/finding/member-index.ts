import type { MemberView } from '#domain/contract/views';
import { parseMark } from '#domain/frame/mark';
import { compareMarkKeys, markKey, type MarkKey } from '#domain/frame/mark-order';
import { spellings } from '#domain/lexicon/kinds';
import { findKind, foldTerm } from '#domain/lexicon/track-of-kind';

/** Members made ready for being searched by what people type: any part of mark, kind, name or place. */
export interface MemberIndex {
  readonly entries: readonly Entry[];
  readonly byMark: ReadonlyMap<string, MemberView>;
}

interface Entry {
  readonly member: MemberView;
  readonly mark: string;
  /** Kind under all its names, name and place, folded. */
  readonly words: string;
  readonly key: MarkKey;
}

export function indexMembers(members: readonly MemberView[]): MemberIndex {
  const entries = members
    .map((member) => ({
      member,
      mark: foldTerm(member.mark),
      words: wordsOf(member),
      key: markKey(member.mark),
    }))
    .sort((a, b) => compareMarkKeys(a.key, b.key));
  return { entries, byMark: new Map(members.map((member) => [member.mark, member])) };
}

function wordsOf({ kind, name, place }: MemberView): string {
  const known = findKind(kind);
  return [kind, ...(known ? spellings(known) : []), name, place].map(foldTerm).join('\n');
}

/** Best first: the mark itself, marks that begin with it, marks that hold it, then everything else that fits. */
export function searchMembers(index: MemberIndex, text: string): MemberView[] {
  const whole = foldTerm(text);
  if (whole === '') return index.entries.map(({ member }) => member);
  const terms = whole.split(' ');
  const found = index.entries
    .filter((entry) => entry.mark.includes(whole) || terms.every((term) => holds(entry, term)))
    .map((entry) => ({ entry, rank: rank(entry, whole) }));
  // The sort is stable: within a rank the order of marks stays.
  return found.sort((a, b) => a.rank - b.rank).map(({ entry }) => entry.member);
}

function holds(entry: Entry, term: string): boolean {
  return entry.mark.includes(term) || entry.words.includes(term);
}

function rank({ mark }: Entry, whole: string): number {
  if (mark === whole) return 0;
  if (mark.startsWith(whole)) return 1;
  return mark.includes(whole) ? 2 : 3;
}

/** What can be picked for a tag: members that still stand in the schedule. */
export function offeredFor(index: MemberIndex, text: string): MemberView[] {
  return searchMembers(index, text).filter((member) => !member.retired);
}

/** The member that this text names exactly, in the normal form of marks. */
export function findMember(index: MemberIndex, text: string): MemberView | undefined {
  const parsed = parseMark(text);
  return parsed.ok ? index.byMark.get(parsed.mark) : undefined;
}
