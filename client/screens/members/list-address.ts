import type { MemberView } from '#domain/contract/views';

export const MEMBER_FILTERS = ['standing', 'bare', 'retired'] as const;
export type MemberFilter = (typeof MEMBER_FILTERS)[number];

/** What the list is narrowed to and where one was in it: it stands in the address, so that one comes back to it. */
export interface ListPlace {
  readonly words: string;
  readonly filter: MemberFilter;
  /** The mark of the member from which one comes back. */
  readonly at: string | null;
}

export function readListPlace(search: URLSearchParams): ListPlace {
  const filter = MEMBER_FILTERS.find((known) => known === search.get('show')) ?? 'standing';
  return { words: search.get('find') ?? '', filter, at: search.get('at') };
}

/** With the question mark, or empty. */
export function listAddress({ words, filter, at }: Omit<ListPlace, 'at'> & { at?: string | null }): string {
  const text = new URLSearchParams({
    ...(words.trim() === '' ? {} : { find: words }),
    ...(filter === 'standing' ? {} : { show: filter }),
    ...(at ? { at } : {}),
  }).toString();
  return text === '' ? '' : `?${text}`;
}

export function belongs(member: MemberView, filter: MemberFilter): boolean {
  if (filter === 'retired') return member.retired;
  return !member.retired && (filter === 'standing' || member.stage === null);
}
