import type { MemberView } from '#domain/contract/views';
import { parseMark } from '#domain/frame/mark';
import { compareMarkKeys, markKey, type MarkKey } from '#domain/frame/mark-order';
import { spellings } from '#domain/lexicon/kinds';
import { findKind, foldTerm } from '#domain/lexicon/track-of-kind';
import { markReading } from './mark-reading.ts';

/** Members made ready for being searched by what people type: any part of mark, kind, name or place. */
export interface MemberIndex {
  readonly entries: readonly Entry[];
  readonly byMark: ReadonlyMap<string, MemberView>;
}

interface Entry {
  readonly member: MemberView;
  readonly mark: string;
  readonly reading: string;
  /** Kind under all its names, name and place, folded. */
  readonly words: string;
  readonly key: MarkKey;
}

export function indexMembers(members: readonly MemberView[]): MemberIndex {
  const entries = members
    .map((member) => ({
      member,
      mark: foldTerm(member.mark),
      reading: markReading(member.mark),
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

/** What is searched for, in the two ways in which it may be written. */
interface Wanted {
  readonly text: string;
  readonly reading: string;
}

/** Best first: the mark itself, marks that begin with it, marks that hold it, then everything else that fits. */
export function searchMembers(index: MemberIndex, text: string): MemberView[] {
  const wanted = wantedFor(foldTerm(text));
  if (wanted.text === '') return index.entries.map(({ member }) => member);
  const terms = wanted.text.split(' ').map(wantedFor);
  const ranked = index.entries
    .map((entry) => ({ entry, rank: rank(entry, wanted) }))
    .filter(({ entry, rank: found }) => found < OTHERWISE || terms.every((term) => holds(entry, term)));
  // The sort is stable: within a rank the order of marks stays.
  return ranked.sort((a, b) => a.rank - b.rank).map(({ entry }) => entry.member);
}

const wantedFor = (text: string): Wanted => ({ text, reading: markReading(text) });

function holds({ mark, words, reading }: Entry, term: Wanted): boolean {
  return mark.includes(term.text) || words.includes(term.text) || isIn(reading, term.reading);
}

const OTHERWISE = 4;

function rank({ mark, reading }: Entry, wanted: Wanted): number {
  if (mark === wanted.text) return 0;
  if (wanted.reading !== '' && reading === wanted.reading) return 1;
  if (mark.startsWith(wanted.text) || begins(reading, wanted.reading)) return 2;
  return mark.includes(wanted.text) ? 3 : OTHERWISE;
}

/** 3 is in い3柱, but not in い13 or い30: half a number is another number. */
function isIn(reading: string, wanted: string): boolean {
  for (let at = reading.indexOf(wanted); wanted !== '' && at >= 0; at = reading.indexOf(wanted, at + 1)) {
    const isCut = /^\d/.test(wanted) && /\d$/.test(reading.slice(0, at));
    if (!isCut && begins(reading.slice(at), wanted)) return true;
  }
  return false;
}

/** い1 begins い1柱, but not い12. */
function begins(reading: string, wanted: string): boolean {
  if (wanted === '' || !reading.startsWith(wanted)) return false;
  return !/\d$/.test(wanted) || !/\d/.test(reading.charAt(wanted.length));
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

/** The member that this text names: its mark, or what is read as the mark of one standing member only. */
export function meantMember(index: MemberIndex, text: string): MemberView | undefined {
  const named = findMember(index, text);
  if (named) return named;
  const reading = markReading(text);
  const alike = index.entries.filter((entry) => entry.reading === reading && !entry.member.retired);
  return alike.length === 1 && reading !== '' ? alike[0]?.member : undefined;
}
