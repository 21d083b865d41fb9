import { randomUUID } from 'node:crypto';
import type { Role } from '#domain/contract/shapes';
import type { AccountView } from '#domain/contract/views';
import { newHouse, type Client, type TestServer } from './server.ts';

export interface Asker {
  readonly name: string;
  readonly client: Client;
  /** In the house that is asked about; null of an account without one, undefined signed out. */
  readonly role: Role | null | undefined;
  /** An access token of the asker's own that nothing is asked with. */
  readonly token: string;
}

/** One of each role in the house, one account without a house, each by cookie and by token; and one signed out. */
export async function makeAskers(server: TestServer, house: string): Promise<Asker[]> {
  const people: [Role | null, Client][] = [['owner', server.owner]];
  for (const role of ['carpenter', 'inspector', 'builder'] as const)
    people.push([role, await server.join(house, `${role}@example.org`, role)]);
  people.push([null, await withoutHouse(server, 'nobody@example.org')]);
  const askers = await Promise.all(people.map(([role, client]) => byCookieAndToken(role, client)));
  const signedOut = { name: 'signed out', client: server.anonymous(), role: undefined, token: randomUUID() };
  return [...askers.flat(), signedOut];
}

async function byCookieAndToken(role: Role | null, client: Client): Promise<Asker[]> {
  const name = role ?? 'account without a house';
  const newToken = async () => {
    const id = randomUUID();
    const { secret } = await client.post<{ secret: string }>('/tokens', { id, name: 'script' });
    return { id, secret };
  };
  const { secret } = await newToken();
  return [
    { name, client, role, token: (await newToken()).id },
    { name: `${name} by token`, client: client.withToken(secret), role, token: (await newToken()).id },
  ];
}

/** An account is made by a link into a house, which this one has left. */
export async function withoutHouse(server: TestServer, email: string): Promise<Client> {
  const { id } = await newHouse(server.owner, 'Passed through');
  const client = await server.join(id, email);
  const { account } = await client.get<{ account: AccountView }>('/session');
  await server.owner.delete(`/houses/${id}/people/${account.id}`);
  return client;
}
