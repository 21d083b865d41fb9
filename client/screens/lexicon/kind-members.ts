import type { MemberView } from '#domain/contract/views';
import type { Lexicon } from '#domain/lexicon/make-lexicon';
import { kindIn } from '#domain/lexicon/make-lexicon';

/** The members of the house that stand in its schedule, by the id of their kind. */
export function membersByKind(
  members: Iterable<MemberView>,
  lexicon: Lexicon,
): ReadonlyMap<string, readonly MemberView[]> {
  const byKind = new Map<string, MemberView[]>();
  for (const member of members) {
    const kind = member.retired ? undefined : kindIn(lexicon, member.kind);
    if (!kind) continue;
    const of = byKind.get(kind.id) ?? [];
    byKind.set(kind.id, of);
    of.push(member);
  }
  return byKind;
}
