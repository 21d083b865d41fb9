import { randomUUID } from 'node:crypto';
import { afterAll, beforeAll, expect, it } from 'vitest';
import type { Answer } from '#domain/contract/routes';
import type { HouseView, LedgerEntryView } from '#domain/contract/views';
import { describeOverBothDatabases, type PlaceForDatabase } from '../support/databases.ts';
import { OWNER, newHouse, startServer, type Client, type TestServer, codeOf } from '../support/server.ts';

describeOverBothDatabases('accounts and roles', (make) => {
  let place: PlaceForDatabase;
  let server: TestServer;
  let house: HouseView;
  let carpenter: Client;
  beforeAll(async () => {
    place = await make();
    server = await startServer(place);
    house = await newHouse(server.owner);
    carpenter = await server.join(house.id, 'Joiner@Example.org');
  });
  afterAll(async () => {
    await server.close();
    await place.remove();
  });

  it('signs in and out; a wrong password and an unknown e-mail look the same', async () => {
    const client = server.anonymous();
    const wrong = await client.raw(
      'POST',
      '/session',
      json({ email: OWNER.email, password: 'not the password' }),
    );
    const unknown = await client.raw(
      'POST',
      '/session',
      json({ email: 'no@example.org', password: 'not the password' }),
    );
    expect(wrong.status).toBe(401);
    expect(await wrong.json()).toEqual(await unknown.json());
    await client.post('/session', { ...OWNER, email: OWNER.email.toUpperCase() });
    expect(await client.get('/session')).toMatchObject({ account: { email: OWNER.email, keeper: true } });
    await client.delete('/session');
    expect(await client.get('/session')).toEqual({ account: null });
    expect(await codeOf(client.get('/houses'))).toBe('not-signed-in');
  });

  it('sends a session cookie that scripts of a page cannot read and other sites do not carry', async () => {
    const response = await server.anonymous().raw('POST', '/session', json(OWNER));
    const [cookie] = response.headers.getSetCookie();
    expect(cookie).toMatch(/HttpOnly/i);
    expect(cookie).toMatch(/SameSite=Lax/i);
  });

  it('slows down guessing', async () => {
    const client = server.anonymous();
    const email = 'guessed@example.org';
    for (let i = 0; i < 10; i++)
      expect(await codeOf(client.post('/session', { email, password: `guess number ${i}` }))).toBe(
        'wrong-credentials',
      );
    expect(await codeOf(client.post('/session', { email, password: 'guess' }))).toBe('too-many-attempts');
  });

  it('gives a role by a link that works once', async () => {
    const { link, person } = await server.owner.post<{ link: string; person: null }>(
      `/houses/${house.id}/people`,
      {
        email: 'inspector@example.org',
        role: 'inspector',
      },
    );
    expect(person).toBeNull();
    const asked = async () =>
      (await server.owner.get<{ invited: { email: string; role: string }[] }>(`/houses/${house.id}/people`))
        .invited;
    expect(await asked()).toMatchObject([{ email: 'inspector@example.org', role: 'inspector' }]);
    expect(await server.anonymous().get(`/links/${link}`)).toEqual({
      purpose: 'join-house',
      email: 'inspector@example.org',
      house: house.name,
      role: 'inspector',
      by: 'owner',
      until: expect.any(String) as string,
    });
    const entering = { name: 'Inspector', email: 'inspector@example.org', password: OWNER.password };
    const both = await Promise.allSettled([
      server.anonymous().post(`/links/${link}`, entering),
      server.anonymous().post(`/links/${link}`, entering),
    ]);
    expect(both.map((result) => result.status).sort()).toEqual(['fulfilled', 'rejected']);
    expect(both.find((result) => result.status === 'fulfilled')?.value).toMatchObject({ house: house.id });
    expect(await asked()).toEqual([]);
    expect(await codeOf(server.anonymous().get(`/links/${link}`))).toBe('link-used-or-expired');
    const { people } = await server.owner.get<{ people: { name: string; role: string }[] }>(
      `/houses/${house.id}/people`,
    );
    expect(people.map(({ name, role }) => `${name} ${role}`)).toContain('Inspector inspector');
  });

  it('adds somebody who has an account without a link, changes the role, and never leaves a house without owner', async () => {
    const other = await newHouse(server.owner, 'Store');
    const added = await server.owner.post<{ link: null; person: { id: string } }>(
      `/houses/${other.id}/people`,
      {
        email: 'joiner@example.org',
        role: 'builder',
      },
    );
    expect(added.link).toBeNull();
    expect((await carpenter.get<HouseView>(`/houses/${other.id}`)).role).toBe('builder');
    const { account } = await server.owner.get<{ account: { id: string } }>('/session');
    expect(await codeOf(server.owner.delete(`/houses/${other.id}/people/${account.id}`))).toBe('last-owner');
    await server.owner.delete(`/houses/${other.id}/people/${added.person.id}`);
    expect(await codeOf(carpenter.get(`/houses/${other.id}`))).toBe('not-found');
  });

  it('names in the ledger whoever made the link as the one who gave the role', async () => {
    const other = await newHouse(server.owner, 'Shed');
    const { account } = await server.owner.get<{ account: { id: string; name: string } }>('/session');
    await server.join(other.id, 'invited@example.org', 'inspector');
    const { entries } = await server.owner.get<{ entries: LedgerEntryView[] }>(`/houses/${other.id}/ledger`);
    expect(entries.at(-1)).toMatchObject({
      kind: 'role.granted',
      by: { id: account.id, name: account.name },
      payload: { person: { name: 'invited' }, role: 'inspector' },
    });
  });

  it('hides a house from everybody else as if it did not exist, whatever is asked', async () => {
    const stranger = await server.join(
      (await newHouse(server.owner, 'Elsewhere')).id,
      `stranger${randomUUID()}@example.org`,
    );
    const covering = randomUUID();
    await server.owner.put(`/houses/${house.id}/members/${encodeURIComponent('い一')}`, { kind: '柱' });
    await server.owner.post(`/houses/${house.id}/coverings`, {
      id: covering,
      name: 'Plaster',
      kind: 'plaster',
      hides: [{ mark: 'い一', least: 'raised' }],
    });
    const asked: [string, string][] = [
      ['GET', `/houses/${house.id}`],
      ['GET', `/houses/${house.id}/members`],
      ['GET', `/houses/${house.id}/members/${encodeURIComponent('い一')}`],
      ['GET', `/houses/${house.id}/closing-report`],
      ['GET', `/houses/${house.id}/ledger`],
      ['GET', `/houses/${house.id}/events`],
      ['GET', `/houses/${house.id}/people`],
      ['POST', `/houses/${house.id}/photos`],
      ['POST', `/coverings/${covering}/close`],
      ['PUT', `/coverings/${covering}`],
      ['GET', `/houses/${randomUUID()}`],
    ];
    for (const [method, address] of asked) {
      const init = method === 'GET' ? {} : json({});
      const response = await stranger.raw(method, address, init);
      expect([address, response.status]).toEqual([address, 404]);
    }
    const { houses } = await stranger.get<{ houses: HouseView[] }>('/houses');
    expect(houses.map((h) => h.name)).toEqual(['Elsewhere']);
    // Not even by trying to open a house under its id.
    const taken = stranger.post('/houses', { id: house.id, name: 'Mine', zone: 'Asia/Tokyo' });
    expect(await codeOf(taken)).toBe('id-used-for-something-else');
  });

  it('begins a new session at every sign-in, and ends it for good at the sign-out', async () => {
    const signIn = (cookie?: string) => askWith(cookie, 'POST', '/session', OWNER);
    const first = cookieOf(await signIn());
    // A session that somebody else has put into the browser beforehand is not the one that is used then.
    const second = cookieOf(await signIn(first));
    expect(second).not.toBe(first);
    expect([await isSignedIn(first), await isSignedIn(second)]).toEqual([false, true]);
    await askWith(second, 'DELETE', '/session');
    expect(await isSignedIn(second)).toBe(false);
  });

  it('changes a password for who knows the present one, and ends every other session', async () => {
    const email = 'changing@example.org';
    await server.join(house.id, email);
    const [here, there] = await Promise.all(
      [0, 1].map(async () => cookieOf(await askWith(undefined, 'POST', '/session', { ...OWNER, email }))),
    );
    const id = randomUUID();
    const { secret } = (await (await askWith(here, 'POST', '/tokens', { id, name: 'script' })).json()) as {
      secret: string;
    };
    const streams = await Promise.all(
      [here, there].map((cookie) => askWith(cookie, 'GET', `/houses/${house.id}/events`)),
    );
    const change = (present: string, tokens = false) =>
      askWith(here, 'PUT', '/session/password', { present, password: 'another long password', tokens });
    expect((await change('a wrong password')).status).toBe(403);
    expect(await isSignedIn(there)).toBe(true);
    const changed = await change(OWNER.password);
    const fresh = cookieOf(changed);
    expect([await isSignedIn(fresh), await isSignedIn(here), await isSignedIn(there)]).toEqual([
      ...[true, false, false],
    ]);
    // They would otherwise hear of the house for as long as they stay open.
    for (const stream of streams) await stream.text();
    expect(await codeOf(server.anonymous().withToken(secret).get('/houses'))).toBe('no problem');
    const old = server.anonymous().post('/session', { ...OWNER, email });
    expect(await codeOf(old)).toBe('wrong-credentials');

    const { sessions } = (await (await askWith(fresh, 'GET', '/sessions')).json()) as Answer<'listSessions'>;
    expect(sessions).toMatchObject([{ here: true, userAgent: 'Mozilla/5.0 (test)' }]);
    const ended = await askWith(fresh, 'DELETE', '/sessions?tokens=1');
    expect(ended.status).toBe(204);
    expect(await isSignedIn(fresh)).toBe(false);
    expect(await codeOf(server.anonymous().withToken(secret).get('/houses'))).toBe('not-signed-in');
  });

  const askWith = (cookie: string | undefined, method: string, address: string, body?: unknown) =>
    fetch(`${server.running.origin}/api/v1${address}`, {
      ...(body === undefined ? {} : { body: JSON.stringify(body) }),
      method,
      headers: {
        'content-type': 'application/json',
        'user-agent': 'Mozilla/5.0 (test)',
        ...(cookie === undefined ? {} : { cookie }),
      },
    });
  const cookieOf = (response: Response) => response.headers.getSetCookie()[0]?.split(';')[0] ?? '';
  const isSignedIn = async (cookie: string | undefined) => {
    const response = await askWith(cookie, 'GET', '/session');
    return ((await response.json()) as Answer<'readSession'>).account !== null;
  };

  it('leaves people and the house’s own facts to its owners', async () => {
    expect(await codeOf(carpenter.patch(`/houses/${house.id}`, { name: 'Mine' }))).toBe('not-permitted');
    expect(
      await codeOf(carpenter.post(`/houses/${house.id}/people`, { email: 'x@example.org', role: 'owner' })),
    ).toBe('not-permitted');
  });

  it('lets a script work with a token, until it is ended', async () => {
    const id = randomUUID();
    const { secret } = await carpenter.post<{ secret: string }>('/tokens', { id, name: 'nightly export' });
    const script = server.anonymous().withToken(secret);
    expect((await script.get<HouseView>(`/houses/${house.id}`)).name).toBe(house.name);
    const { tokens } = await carpenter.get<{ tokens: { id: string; lastUsedAt: string | null }[] }>(
      '/tokens',
    );
    expect(tokens).toEqual([expect.objectContaining({ id, lastUsedAt: expect.any(String) as string })]);
    expect(await codeOf(server.owner.delete(`/tokens/${id}`))).toBe('not-found');
    await carpenter.delete(`/tokens/${id}`);
    expect(await codeOf(script.get('/houses'))).toBe('not-signed-in');
    expect(await codeOf(server.anonymous().withToken('arakabe_guess').get('/houses'))).toBe('not-signed-in');
  });
});

function json(body: unknown): RequestInit {
  return { body: JSON.stringify(body), headers: { 'content-type': 'application/json' } };
}
