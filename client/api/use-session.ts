import { useEffect, useSyncExternalStore } from 'react';
import { queryOptions, useQuery, useQueryClient, type Query, type QueryClient } from '@tanstack/react-query';
import type { Answer } from '#domain/contract/routes';
import { call } from './call.ts';
import { keys } from './keys.ts';
import { noteAccount, onNoted } from './noted-account.ts';
import { sessionEnd, type SessionState } from './session-end.ts';

type Session = Answer<'readSession'>;

export const sessionQuery = queryOptions({
  queryKey: keys.session,
  queryFn: ({ signal, client }) => readSession(client, signal),
  staleTime: 60_000,
});

/** Who is signed in; `data.account` is null when nobody is. */
export function useSession() {
  return useQuery(sessionQuery);
}

/**
 * Where somebody was signed in and is no more, the answer of before stays until they have seen it: without
 * an account every screen is left at once, with what is being typed there.
 */
async function readSession(client: QueryClient, signal: AbortSignal): Promise<Session> {
  const now = await call('readSession', { signal });
  const before = client.getQueryData<Session>(keys.session);
  noteAccount(now.account?.id ?? null);
  if (before?.account && !now.account) {
    sessionEnd.hear();
    return before;
  }
  if (before?.account && now.account && before.account.id !== now.account.id) {
    sessionEnd.change();
    void client.resetQueries({ predicate: isOfSomebody });
  } else if (now.account) sessionEnd.known();
  return now;
}

/** Somebody has just signed in: nothing that another was shown stays in memory. */
export function beginSession(client: QueryClient, session: Session): void {
  client.removeQueries({ predicate: isOfSomebody });
  noteAccount(session.account?.id ?? null);
  sessionEnd.signedIn();
  client.setQueryData(keys.session, session);
}

const isOfSomebody = ({ queryKey }: Query) => queryKey[0] !== keys.session[0];

/** Nobody is signed in any more, and whoever was has seen it: the way to signing in is free. */
export function endSession(client: QueryClient): void {
  client.setQueryData<Session>(keys.session, { account: null });
}

export function useSessionState(): SessionState {
  return useSyncExternalStore(sessionEnd.subscribe, sessionEnd.state);
}

/** Another window of this browser has signed in or out: its cookie is ours. */
export function useSharedSession(): void {
  const client = useQueryClient();
  useEffect(() => onNoted(() => void client.invalidateQueries({ queryKey: keys.session })), [client]);
}
