import type { Role } from '#domain/contract/shapes';
import { groupBy } from '#domain/group-by';
import type { StoryEntry } from './archive-material.ts';

export type RoleEntry = Extract<StoryEntry, { kind: 'role.granted' | 'role.withdrawn' }>;

export function rolesIn(story: readonly StoryEntry[]): RoleEntry[] {
  return story.filter((entry) => entry.kind === 'role.granted' || entry.kind === 'role.withdrawn');
}

/** Gives the role that a person had when an entry was said, null where there was none. */
export function roleFinder(roles: readonly RoleEntry[]): (person: string, seq: number) => Role | null {
  const byPerson = groupBy(roles, ({ payload }) => payload.person.id);
  return (person, seq) => {
    const last = byPerson.get(person)?.findLast((entry) => entry.seq < seq);
    return last?.kind === 'role.granted' ? last.payload.role : null;
  };
}
