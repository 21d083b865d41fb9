import { mayAct } from '#domain/contract/acts';
import type { PersonInHouseView } from '#domain/contract/views';

/** Why nobody could release a covering once `asker` has said that it is ready; null: somebody can. */
export function whyNobodyReleases(
  people: readonly Pick<PersonInHouseView, 'id' | 'role'>[],
  { asker, fourEyes }: { asker: string | undefined; fourEyes: boolean },
): 'nobody' | 'onlyYou' | null {
  const may = people.filter(({ role }) => mayAct(role, 'review'));
  if (may.length === 0) return 'nobody';
  return fourEyes && may.every(({ id }) => id === asker) ? 'onlyYou' : null;
}
