import { afterAll, beforeAll, expect, it } from 'vitest';
import type { Answer } from '#domain/contract/routes';
import type { HouseView, LedgerEntryView, LinkView } from '#domain/contract/views';
import { makeKeepersPasswordLink } from '../../server/services/passwords.ts';
import { describeOverEitherDatabase, type PlaceForDatabase } from '../support/databases.ts';
import {
  HttpProblem,
  OWNER,
  newHouse,
  startServer,
  type Client,
  type TestServer,
} from '../support/server.ts';

const DAY_MS = 24 * 60 * 60 * 1000;
const NEW = 'a password that is new';

const codeOf = (work: Promise<unknown>) =>
  work.then(
    () => 'no problem',
    (error: unknown) => (error instanceof HttpProblem ? error.problem.code : String(error)),
  );

describeOverEitherDatabase('one-time links', (make) => {
  let place: PlaceForDatabase;
  let server: TestServer;
  let house: HouseView;
  let later = 0;
  beforeAll(async () => {
    place = await make();
    server = await startServer(place, { now: () => new Date(Date.now() + later) });
    house = await newHouse(server.owner);
  });
  afterAll(async () => {
    await server.close();
    await place.remove();
  });

  const invite = async (email: string, more: object = {}, client = server.owner) => {
    const body = { email, role: 'inspector', ...more };
    return (await client.post<{ link: string }>(`/houses/${house.id}/people`, body)).link;
  };
  const invited = async () =>
    (await server.owner.get<Answer<'listPeople'>>(`/houses/${house.id}/people`)).invited;
  const idOf = async (client: Client) =>
    (await client.get<{ account: { id: string } }>('/session')).account.id;
  const read = (link: string) => server.anonymous().get<LinkView>(`/links/${link}`);
  const passwordLink = async (person: string, client = server.owner) =>
    (await client.post<Answer<'makePasswordLink'>>(`/houses/${house.id}/people/${person}/password-link`))
      .link;
  const ledger = async (of = house.id) =>
    (await server.owner.get<{ entries: LedgerEntryView[] }>(`/houses/${of}/ledger?limit=500`)).entries;

  it('invites for as many days as the keeper says, and until then only', async () => {
    const link = await invite('day@example.org', { days: 1 });
    expect(Date.parse((await read(link)).until) - Date.now()).toBeCloseTo(DAY_MS, -5);
    expect(await codeOf(invite('x@example.org', { days: 31 }))).toBe('invalid-request');
    later = DAY_MS + 1000;
    expect(await codeOf(read(link))).toBe('link-used-or-expired');
    expect(await invited()).toEqual([]);
    later = 0;
  });

  it('lists the open invitations and ends one of them', async () => {
    const [first, second] = [
      await invite('ren@example.org'),
      await invite('ren@example.org', { role: 'builder' }),
    ];
    const open = await invited();
    expect(open.filter(({ email }) => email === 'ren@example.org')).toMatchObject([
      { role: 'inspector', by: 'owner' },
      { role: 'builder', by: 'owner' },
    ]);
    const id = open.find(({ role }) => role === 'builder')?.id ?? '';
    const elsewhere = await newHouse(server.owner, 'Shed');
    await server.owner.delete(`/houses/${elsewhere.id}/invitations/${id}`);
    expect((await read(second)).role).toBe('builder');
    await server.owner.delete(`/houses/${house.id}/invitations/${id}`);
    const entering = { name: 'Ren', email: 'ren@example.org', password: OWNER.password };
    expect(await codeOf(read(second))).toBe('link-used-or-expired');
    expect(await codeOf(server.anonymous().post(`/links/${second}`, entering))).toBe('link-used-or-expired');
    // The other still holds, but only for the address that it was made for.
    const strange = server.anonymous().post(`/links/${first}`, { ...entering, email: 'other@example.org' });
    expect(await codeOf(strange)).toBe('invalid-request');
    await server.anonymous().post(`/links/${first}`, entering);
  });

  it('is nobody’s word any more once whoever made it keeps the record no longer', async () => {
    const mate = await server.join(house.id, 'mate@example.org', 'owner');
    const link = await invite('friend@example.org', {}, mate);
    expect((await read(link)).by).toBe('mate');
    await server.owner.delete(`/houses/${house.id}/people/${await idOf(mate)}`);
    expect(await codeOf(read(link))).toBe('link-used-or-expired');
    expect((await invited()).some(({ email }) => email === 'friend@example.org')).toBe(false);
    const entering = { name: 'Friend', email: 'friend@example.org', password: OWNER.password };
    expect(await codeOf(server.anonymous().post(`/links/${link}`, entering))).toBe('link-used-or-expired');
  });

  it('gives back a lost password once, tells by whom, ends all that was open, and says so in the ledger', async () => {
    const email = 'lost@example.org';
    const client = await server.join(house.id, email);
    const person = await idOf(client);
    const { secret } = await client.post<{ secret: string }>('/tokens', {
      id: crypto.randomUUID(),
      name: 'script',
    });
    const before = await passwordLink(person);
    const link = await passwordLink(person);
    expect(await codeOf(read(before))).toBe('link-used-or-expired');
    expect(await read(link)).toMatchObject({ purpose: 'new-password', email, by: 'owner' });
    // It makes no account.
    const entering = { name: 'Lost', email: 'lost2@example.org', password: NEW };
    expect(await codeOf(server.anonymous().post(`/links/${link}`, entering))).toBe('link-used-or-expired');

    const again = server.anonymous();
    await again.post(`/links/${link}/password`, { password: NEW });
    expect(await again.get('/session')).toMatchObject({ account: { id: person } });
    expect(await client.get('/session')).toEqual({ account: null });
    expect(await codeOf(server.anonymous().withToken(secret).get('/houses'))).toBe('not-signed-in');
    expect(await codeOf(server.anonymous().post(`/links/${link}/password`, { password: NEW }))).toBe(
      'link-used-or-expired',
    );
    const old = server.anonymous().post('/session', { email, password: OWNER.password });
    expect(await codeOf(old)).toBe('wrong-credentials');
    const said = (await ledger()).filter(({ kind }) => kind.startsWith('password.'));
    expect(said).toMatchObject([
      ...[0, 1].map(() => ({
        kind: 'password.link-made',
        by: { name: 'owner' },
        payload: { person: { id: person } },
      })),
      { kind: 'password.renewed', by: null, payload: { person: { id: person }, linkBy: { name: 'owner' } } },
    ]);
  });

  it('is made for a password only where that opens no house that is not the keeper’s own', async () => {
    const mate = await server.join(house.id, 'both@example.org', 'owner');
    const worker = await server.join(house.id, 'worker@example.org');
    const [mates, workers, owners] = [await idOf(mate), await idOf(worker), await idOf(server.owner)];
    expect(await codeOf(passwordLink(mates, worker))).toBe('not-permitted');
    // The keeper of the instance, and oneself, who may only have left a window open.
    expect(await codeOf(passwordLink(owners, mate))).toBe('password-link-not-yours');
    expect(await codeOf(passwordLink(mates, mate))).toBe('password-link-not-yours');
    expect(await codeOf(passwordLink(crypto.randomUUID()))).toBe('not-found');

    const link = await passwordLink(workers, mate);
    expect((await read(link)).purpose).toBe('new-password');
    // Meanwhile the person has opened a house of their own, and the link would open that, too.
    const own = await newHouse(worker, 'Own house');
    expect(await codeOf(passwordLink(workers, mate))).toBe('password-link-not-yours');
    expect(await codeOf(read(link))).toBe('link-used-or-expired');
    const renewing = () => codeOf(server.anonymous().post(`/links/${link}/password`, { password: NEW }));
    expect(await renewing()).toBe('link-used-or-expired');

    // Whoever runs the program may, and every house hears of it.
    const made = await makeKeepersPasswordLink(server.running.core.context, 'Worker@Example.org');
    expect(await read(made?.link ?? '')).toMatchObject({ email: 'worker@example.org', by: null });
    const said = await worker.get<{ entries: LedgerEntryView[] }>(`/houses/${own.id}/ledger`);
    expect(said.entries.at(-1)).toMatchObject({ kind: 'password.link-made', by: null });
    expect((await ledger()).at(-1)).toMatchObject({ kind: 'password.link-made', by: null });
    expect(await makeKeepersPasswordLink(server.running.core.context, 'no@example.org')).toBeUndefined();
  });

  it('slows down who tries one secret after the other', async () => {
    // Addresses for documentation, RFC 5737.
    const from = (ip: string, link: string) =>
      server.anonymous().raw('GET', `/links/${link}`, { headers: { 'x-forwarded-for': ip } });
    const link = await invite('late@example.org');
    for (let i = 0; i < 10; i++) expect((await from('198.51.100.1', `guess-${i}`)).status).toBe(410);
    expect((await from('198.51.100.1', link)).status).toBe(429);
    expect((await from('198.51.100.2', link)).status).toBe(200);
  });
});
