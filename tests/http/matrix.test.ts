import { randomUUID } from 'node:crypto';
import { afterAll, beforeAll, expect, it } from 'vitest';
import type { AccountView, PhotoView } from '#domain/contract/views';
import { ask, inBatches, operationsOf, type Operation } from '../support/ask-api.ts';
import { makeAskers, withoutHouse, type Asker } from '../support/askers.ts';
import { describeOverEitherDatabase, type PlaceForDatabase } from '../support/databases.ts';
import { furnishHouse, type FurnishedHouse } from '../support/furnished-house.ts';
import { addressOf, complaint, expectedOf, isRight } from '../support/right-answer.ts';
import { startServer, type Client, type TestServer } from '../support/server.ts';
import { WHO_MAY } from '../support/who-may.ts';

describeOverEitherDatabase('who may do what, every operation of the API', (make) => {
  let place: PlaceForDatabase;
  let server: TestServer;
  let operations: Operation[];
  let own: FurnishedHouse;
  let foreign: FurnishedHouse;
  let neighbour: Client;
  let askers: Asker[];
  beforeAll(async () => {
    place = await make();
    server = await startServer(place);
    operations = await operationsOf(server.anonymous());
    own = await furnishHouse(server.owner, 'い一', '2026-04-04');
    neighbour = await withoutHouse(server, 'neighbour@example.org');
    foreign = await furnishHouse(neighbour, 'ろ二', '2026-04-03');
    askers = await makeAskers(server, own.house);
  });
  afterAll(async () => {
    await server.close();
    await place.remove();
  });

  const pictures = async () => (await server.owner.get<PhotoView>(`/photos/${own.things['photo']}`)).pictures;
  const heads = async () =>
    Promise.all([
      server.owner.get<{ head: string }>(`/houses/${own.house}/ledger?limit=1`),
      neighbour.get<{ head: string }>(`/houses/${foreign.house}/ledger?limit=1`),
    ]).then((ledgers) => ledgers.map(({ head }) => head));

  it('is written down for each operation, and for no other', () => {
    const served = operations.map(({ operationId }) => operationId);
    const unnamed = served.filter((id) => !(id in WHO_MAY));
    const gone = Object.keys(WHO_MAY).filter((id) => !served.includes(id));
    expect(unnamed.map((id) => `Who may ${id}? Write it in tests/support/who-may.ts.`)).toEqual([]);
    expect(gone.map((id) => `There is no ${id}: take it out of tests/support/who-may.ts.`)).toEqual([]);
  });

  it('stands in the API’s own description', () => {
    for (const { operationId, roles, description } of operations) {
      const who = WHO_MAY[operationId] ?? [];
      const expected = typeof who === 'string' ? undefined : who;
      expect([operationId, roles]).toEqual([operationId, expected]);
      expect(description).toMatch(who === 'anyone' ? /^For anyone\.$/ : /account|in the house/);
      for (const role of expected ?? []) expect(description).toContain(role);
    }
  });

  it('holds for every role, without a house and signed out, by cookie and by token', async () => {
    await expect.poll(pictures, { timeout: 10_000 }).toBe('ready');
    const before = await heads();
    // These end what is asked with, or for; they are asked at the end.
    const asked = operations.filter(
      ({ operationId }) => !['signOut', 'endCalendarLink'].includes(operationId),
    );
    expect(await wrongAnswers(asked, own.things, false)).toEqual([]);
    // Nothing was said with what it needs, so nothing may have come of it.
    expect(await heads()).toEqual(before);
  });

  it('makes of a foreign house’s things what it makes of things that do not exist', async () => {
    const before = await heads();
    const asked = operations.filter(
      ({ operationId }) => typeof WHO_MAY[operationId] !== 'string' || operationId === 'deleteToken',
    );
    const token = randomUUID();
    await neighbour.post('/tokens', { id: token, name: 'mine' });
    expect(await wrongAnswers(asked, { ...foreign.things, token }, true)).toEqual([]);
    expect(await heads()).toEqual(before);
  });

  it('tells nothing of a foreign house’s things beside an own house', async () => {
    const { account } = await neighbour.get<{ account: AccountView }>('/session');
    const there = { ...foreign.things, content: foreign.content, person: account.id };
    const nowhere = { ...unknownThings(), content: 'a'.repeat(64), person: randomUUID() };
    const asked = (things: Readonly<Record<string, string>>) =>
      [
        ['GET', `photos?after=${things['photo']}`],
        ['GET', `photo-days?place=${things['photo']}`],
        ['GET', `photos/known?sha256=${things['content']}`],
        ['GET', `photos?by=${things['person']}`],
        ['GET', `findings?photo=${things['photo']}`],
        ['GET', `findings?covering=${things['covering']}`],
        ['GET', `members/${things['mark']}`],
        ['GET', `kinds/${things['term']}/photos`],
        ['DELETE', `terms/${things['term']}?reason=wrong`],
        ['DELETE', `members/${things['mark']}`],
        ['DELETE', `people/${things['person']}`],
      ] as const;
    for (const [i, [method, address]] of asked(there).entries()) {
      const tell = async (end: string, mark: string) => {
        const response = await server.owner.raw(method, `/houses/${own.house}/${end}`);
        return [address, response.status, (await response.text()).replaceAll(mark, 'MARK')];
      };
      expect(await tell(address, 'ろ二')).toEqual(await tell(asked(nowhere)[i]?.[1] ?? '', 'ぬ九'));
    }
  });

  it('lets nobody take over a foreign thing by its id', async () => {
    const before = await heads();
    const { house, photo, tag } = own.things;
    const { covering, protection, clockMark, tag: foreignTag } = foreign.things;
    const region = { shape: 'rectangle', x: 0.1, y: 0.2, w: 0.3, h: 0.4 };
    const facts = { id: foreignTag, mark: 'い一', stage: 'raised', region };
    const hides = ['い一'];
    const asked: [string, string, object][] = [
      ['POST', '/houses', { id: foreign.house, name: 'Mine', zone: 'Asia/Tokyo' }],
      ['POST', `/photos/${photo}/tags`, facts],
      ['PUT', `/tags/${tag}`, facts],
      ['POST', `/photos/${photo}/clock-mark`, { id: clockMark, trueTime: '2026-04-04T03:00:00.000Z' }],
      ['POST', `/houses/${house}/coverings`, { id: covering, name: 'Mine', kind: 'floor', hides: [] }],
      ['POST', `/houses/${house}/protections`, { id: protection, name: 'Mine', what: 'sheet', hides }],
    ];
    for (const [method, address, body] of asked) {
      const response = await server.owner.raw(method, address, json(body));
      expect([address, response.status]).toEqual([address, 409]);
      expect(await response.json()).toMatchObject({ code: 'id-used-for-something-else' });
    }
    expect(await heads()).toEqual(before);
  });

  it('is the same for an address that is written otherwise', async () => {
    const builder = askers.find(({ name }) => name === 'builder')?.client ?? server.anonymous();
    const [mine, there] = [own.things['covering'] ?? '', foreign.things['covering'] ?? ''];
    const written = (id: string) => [
      `/coverings/${id}/close/`,
      `/COVERINGS/${id}/Close`,
      `/coverings/${id.replace('-', '%2D')}/close`,
      `/coverings/${id}/close?_method=GET`,
    ];
    const statuses = (client: Client, addresses: readonly string[], method = 'POST') =>
      Promise.all(
        addresses.map(async (address) => {
          const headers = { 'x-http-method-override': 'GET' };
          return (await client.raw(method, address, { headers })).status;
        }),
      );
    expect(await statuses(server.anonymous(), written(mine))).toEqual([401, 401, 401, 401]);
    expect(await statuses(builder, written(mine))).toEqual([403, 403, 403, 403]);
    expect(await statuses(builder, written(there))).toEqual([404, 404, 404, 404]);
    const noId = [
      mine.toUpperCase(),
      mine.replace('-', '%252D'),
      `${mine}%00`,
      `${mine}%2Fclose`,
      `%20${mine}`,
    ];
    expect(
      await statuses(
        server.owner,
        noId.map((id) => `/coverings/${id}/close`),
      ),
    ).toEqual(noId.map(() => 404));
    // A path that cannot be decoded (RFC 3986, 2.1) is a mistake of whoever asks, not a defect.
    expect(await statuses(server.owner, ['/coverings/%E0%A4%A/close'])).toEqual([400]);
  });

  it('holds for HEAD as for GET', async () => {
    const readings = operations.filter(
      ({ method, operationId }) => method === 'GET' && typeof WHO_MAY[operationId] !== 'string',
    );
    const statuses = (client: Client, things: FurnishedHouse['things']) =>
      inBatches(
        readings.map(
          (operation) => async () => (await ask(client, 'HEAD', addressOf(operation, things))).status,
        ),
      );
    expect(new Set(await statuses(server.anonymous(), own.things))).toEqual(new Set([401]));
    expect(new Set(await statuses(neighbour, own.things))).toEqual(new Set([404]));
    expect(new Set(await statuses(server.owner, own.things))).toEqual(new Set([200]));
  });

  it('takes a character that no database holds for a mistake, not for a defect', async () => {
    const asked = [
      ...['members/%00', 'kinds/%00/photos', 'photos?by=%00', 'photos?mark=%00', 'findings?mark=%00'],
      ...['DELETE people/%00', 'DELETE terms/%00?reason=wrong', 'DELETE members/%00'],
    ];
    for (const each of asked) {
      const [method = '', address = ''] = each.includes(' ') ? each.split(' ') : ['GET', each];
      const { status } = await server.owner.raw(method, `/houses/${own.house}/${address}`);
      expect([each, status < 500]).toEqual([each, true]);
    }
  });

  it('ends with the session, for a cookie alone', async () => {
    const end = addressOf(operationNamed('endCalendarLink'), own.things);
    for (const { client, role, name } of askers) {
      const ended = role === undefined ? 401 : role === null ? 404 : 204;
      expect([name, (await client.raw('DELETE', end)).status]).toEqual([name, ended]);
    }
    for (const { client, role, name } of askers) {
      expect((await client.raw('DELETE', '/session')).status).toBe(204);
      const isOver = role === undefined || !name.endsWith('by token');
      expect([name, (await client.raw('GET', '/houses')).status]).toEqual([name, isOver ? 401 : 200]);
    }
  });

  function operationNamed(name: string): Operation {
    const found = operations.find(({ operationId }) => operationId === name);
    if (!found) throw new Error(`There is no ${name}.`);
    return found;
  }

  /** A sentence for each question that is answered otherwise than it should be. */
  async function wrongAnswers(
    asked: readonly Operation[],
    things: FurnishedHouse['things'],
    isForeign: boolean,
  ): Promise<string[]> {
    const nothing = await answersAboutNothing(asked);
    // How somebody is recognised has been asked of the own house.
    const those = isForeign ? askers.filter(({ name }) => !name.endsWith('by token')) : askers;
    const questions = asked.flatMap((operation) =>
      those.map((asker) => async () => {
        const address = addressOf(operation, { token: asker.token, ...things });
        const outcome = await ask(asker.client, operation.method, address);
        const expected = expectedOf(WHO_MAY[operation.operationId] ?? [], asker, isForeign);
        return isRight(outcome, expected, operation.method, nothing.get(operation))
          ? []
          : [complaint(operation, asker, [expected, outcome], isForeign)];
      }),
    );
    return (await inBatches(questions)).flat();
  }

  function unknownThings() {
    const ids = [...Object.keys(own.things), 'token'].map((name) => [name, randomUUID()]);
    const { date = '' } = own.things;
    return { ...Object.fromEntries(ids), mark: encodeURIComponent('ぬ九'), date } as Record<string, string>;
  }

  async function answersAboutNothing(asked: readonly Operation[]): Promise<Map<Operation, string>> {
    const things = unknownThings();
    const answers = await inBatches(
      asked.map((operation) => () => ask(server.owner, operation.method, addressOf(operation, things))),
    );
    return new Map(asked.map((operation, i) => [operation, answers[i]?.answer ?? '']));
  }
});

function json(body: object): RequestInit {
  return { body: JSON.stringify(body), headers: { 'content-type': 'application/json' } };
}
