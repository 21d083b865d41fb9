import { useInfiniteQuery, useMutation, useQuery, useQueryClient } from '@tanstack/react-query';
import type { FindingView } from '#domain/contract/findings';
import type { QueryInput } from '#domain/contract/routes';
import { call } from '../../api/call.ts';
import { keys } from '../../api/keys.ts';

export type FindingsFilter = Pick<QueryInput<'listFindings'>, 'kind' | 'state'>;
const PAGE = 50;

export function useFindings(house: string, filter: FindingsFilter) {
  return useInfiniteQuery({
    queryKey: keys.findings(house, filter),
    queryFn: ({ pageParam, signal }) =>
      call('listFindings', {
        params: { house },
        query: { ...filter, offset: pageParam, limit: PAGE },
        signal,
      }),
    initialPageParam: 0,
    getNextPageParam: ({ next }) => next ?? undefined,
  });
}

/** Those about one photo, one member or one covering. */
export function useFindingsAbout(
  house: string,
  about: Pick<QueryInput<'listFindings'>, 'photo' | 'mark' | 'covering'>,
) {
  return useQuery({
    queryKey: keys.findings(house, about),
    queryFn: ({ signal }) =>
      call('listFindings', { params: { house }, query: { ...about, limit: 100 }, signal }),
  });
}

/** What was answered changes what counts: the whole house is asked for anew. */
function useAnswer<Input>(house: string, say: (input: Input) => Promise<unknown>, onDone: () => void) {
  const client = useQueryClient();
  return useMutation({
    mutationFn: say,
    onSettled: () => client.invalidateQueries({ queryKey: keys.allOf(house) }),
    onSuccess: onDone,
  });
}

export function useAccept(house: string, findings: readonly FindingView[], onDone: () => void) {
  const seen = findings.map(({ key, basis }) => ({ key, basis }));
  const say = (reason: string) =>
    call('acceptFindings', { params: { house }, body: { findings: seen, reason } });
  return useAnswer(house, say, onDone);
}

export function useReopen(house: string, { key }: FindingView, onDone: () => void) {
  const say = (reason: string) => call('reopenFinding', { params: { house }, body: { key, reason } });
  return useAnswer(house, say, onDone);
}
