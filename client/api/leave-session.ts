import type { QueryClient } from '@tanstack/react-query';
import { noteAccount } from './noted-account.ts';
import { sessionEnd } from './session-end.ts';
import { endSession } from './use-session.ts';

/** Somebody signs out on purpose: `end` asks the server, `away` leads to where nobody need be signed in. */
export function leaveSession(client: QueryClient, end: () => Promise<unknown>, away: () => unknown) {
  return {
    mutationFn: async () => {
      // What is still being asked would be answered by 'not signed in', which nobody need be told now.
      sessionEnd.leave();
      await client.cancelQueries();
      return end();
    },
    onError: () => sessionEnd.signedIn(),
    onSuccess: async () => {
      // Nothing of the houses may stay in memory for the next person at this device.
      await away();
      client.clear();
      noteAccount(null);
      endSession(client);
    },
  };
}
