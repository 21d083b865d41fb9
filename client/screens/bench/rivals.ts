import type { TagView } from '#domain/contract/views';

type Line = Pick<TagView, 'id' | 'supersedes' | 'state'>;

/**
 * Standing tags that go back to the same earlier one: it was changed twice at once, and both statements
 * stand. By each such tag, the others. Of a chain whose start is not among `tags` the earliest known id counts.
 */
export function rivalsOf<T extends Line>(tags: readonly T[]): ReadonlyMap<string, readonly T[]> {
  const byId = new Map(tags.map((tag) => [tag.id, tag]));
  const origin = (tag: T): string => {
    const earlier = tag.supersedes === null ? undefined : byId.get(tag.supersedes);
    return earlier ? origin(earlier) : (tag.supersedes ?? tag.id);
  };
  const families = new Map<string, T[]>();
  for (const tag of tags) {
    if (tag.state !== 'standing') continue;
    const start = origin(tag);
    families.set(start, [...(families.get(start) ?? []), tag]);
  }
  const rivals = new Map<string, readonly T[]>();
  for (const family of families.values()) {
    if (family.length < 2) continue;
    for (const tag of family)
      rivals.set(
        tag.id,
        family.filter((other) => other !== tag),
      );
  }
  return rivals;
}
