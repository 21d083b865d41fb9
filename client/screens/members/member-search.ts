import type { MemberView } from '#domain/contract/views';
import { compareMarkKeys, markKey } from '#domain/frame/mark-order';
import { spellings } from '#domain/lexicon/kinds';
import { findKind, foldTerm } from '#domain/lexicon/track-of-kind';

export const MEMBER_FILTERS = ['standing', 'bare', 'retired'] as const;
export type MemberFilter = (typeof MEMBER_FILTERS)[number];

export interface SearchableMember {
  readonly member: MemberView;
  /** All by which it is found, folded: 貫 is found as nuki too. */
  readonly text: string;
}

/** In the order of the marks, ready to be searched. */
export function searchable(members: readonly MemberView[]): SearchableMember[] {
  return members
    .map((member) => ({ member, key: markKey(member.mark) }))
    .sort((a, b) => compareMarkKeys(a.key, b.key))
    .map(({ member }) => ({ member, text: searchText(member) }));
}

function searchText({ mark, kind, name, place }: MemberView): string {
  const known = findKind(kind);
  const terms = [mark, kind, name, place, ...(known ? spellings(known) : [])];
  return foldTerm(terms.join('\n'));
}

/** Those of the filter that hold every word typed. */
export function findMembers(
  all: readonly SearchableMember[],
  typed: string,
  filter: MemberFilter,
): MemberView[] {
  const words = foldTerm(typed).split(' ').filter(Boolean);
  return all
    .filter(({ member }) => belongs(member, filter))
    .filter(({ text }) => words.every((word) => text.includes(word)))
    .map(({ member }) => member);
}

function belongs(member: MemberView, filter: MemberFilter): boolean {
  if (filter === 'retired') return member.retired;
  return !member.retired && (filter === 'standing' || member.stage === null);
}
