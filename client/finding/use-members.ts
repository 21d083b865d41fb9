import { useMemo } from 'react';
import { useQuery } from '@tanstack/react-query';
import { call } from '../api/call.ts';
import { keys } from '../api/keys.ts';
import { useLexicon } from '../shell/use-lexicon.ts';
import { indexMembers, type MemberIndex } from './member-index.ts';

/** The schedule, ready for being searched. Empty while it loads: nobody waits for it to draw. */
export function useMembers(house: string): { index: MemberIndex; isLoaded: boolean } {
  const query = useQuery({
    queryKey: keys.members(house),
    queryFn: ({ signal }) => call('listMembers', { params: { house }, signal }),
  });
  const members = query.data?.members;
  const lexicon = useLexicon();
  const index = useMemo(() => indexMembers(members ?? [], lexicon), [members, lexicon]);
  return { index, isLoaded: members !== undefined };
}
