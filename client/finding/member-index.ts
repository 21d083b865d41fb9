import type { MemberView } from '#domain/contract/views';
import { parseMark } from '#domain/frame/mark';
import { compareMarkKeys, markKey, type MarkKey } from '#domain/frame/mark-order';
import { spellings } from '#domain/lexicon/kind';
import { kindIn, type Lexicon } from '#domain/lexicon/make-lexicon';
import { foldTerm } from '#domain/lexicon/fold-term';
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

export function indexMembers(members: readonly MemberView[], lexicon: Lexicon): MemberIndex {
  /** A frame has thousands of members and a few dozen kinds. */
  const kinds = new Map(
    [...new Set(members.map(({ kind }) => kind))].map((kind) => [kind, wordsOf(kind, lexicon)]),
  );
  const entries = members
    .map((member) => ({
      member,
      mark: foldTerm(member.mark),
      reading: markReading(member.mark),
      words: [kinds.get(member.kind) ?? '', foldTerm(member.name), foldTerm(member.place)].join('\n'),
      key: markKey(member.mark),
    }))
    .sort((a, b) => compareMarkKeys(a.key, b.key));
  return { entries, byMark: new Map(members.map((member) => [member.mark, member])) };
}

/** A kind under all its names. */
function wordsOf(kind: string, lexicon: Lexicon): string {
  const known = kindIn(lexicon, kind);
  return [kind, ...(known ? spellings(known) : [])].map(foldTerm).join('\n');
}

/** What is searched for, in the two ways in which it may be written. */
interface Wanted {
  readonly text: string;
  readonly reading: string;
}

const wantedFor = (text: string): Wanted => ({ text, reading: markReading(text) });

/**
 * Best first: the mark itself, marks that begin with it, marks that hold it, then everything else that fits: of
 * `i uchinori` and `1 uchinori` first what lies in い and in 一, since the i of a 'tie' is nobody's line.
 */
export function searchMembers(index: MemberIndex, text: string): MemberView[] {
  const whole = wantedFor(foldTerm(text));
  if (whole.text === '') return index.entries.map(({ member }) => member);
  const terms = whole.text.split(' ').map(wantedFor);
  // Within a rank the order of marks stays.
  const ranks: Record<Rank, MemberView[]> = { 0: [], 1: [], 2: [], 3: [], 4: [], 5: [] };
  for (const entry of index.entries) {
    const rank = rankOf(entry, whole, terms);
    if (rank !== null) ranks[rank].push(entry.member);
  }
  return Object.values(ranks).flat();
}

type Rank = 0 | 1 | 2 | 3 | 4 | 5;

function rankOf(entry: Entry, whole: Wanted, terms: readonly Wanted[]): Rank | null {
  const { mark, reading } = entry;
  if (mark === whole.text) return 0;
  if (whole.reading !== '' && reading === whole.reading) return 1;
  if (mark.startsWith(whole.text) || begins(reading, whole.reading)) return 2;
  if (mark.includes(whole.text)) return 3;
  if (!terms.every((term) => holds(entry, term))) return null;
  return terms.some((term) => begins(reading, term.reading)) ? 4 : 5;
}

function holds({ mark, words, reading }: Entry, term: Wanted): boolean {
  return mark.includes(term.text) || words.includes(term.text) || isIn(reading, term.reading);
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
