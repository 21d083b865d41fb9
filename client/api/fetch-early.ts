import type { QueryClient } from '@tanstack/react-query';
import { houseQuery } from './house-query.ts';
import { sessionQuery } from './use-session.ts';

/**
 * Asks who is signed in, and for the house of the address, while the code of the screen is still on its way:
 * on site each question takes as long to be heard as to be answered.
 */
export async function fetchEarly(client: QueryClient, pathname: string): Promise<void> {
  await client.prefetchQuery(sessionQuery);
  const house = /^\/houses\/([^/]+)/.exec(pathname)?.[1];
  if (house && client.getQueryData(sessionQuery.queryKey)?.account)
    await client.prefetchQuery(houseQuery(house));
}
