import { readdir, writeFile } from 'node:fs/promises';
import { createServer, type AddressInfo, type Server, type Socket } from 'node:net';
import { networkInterfaces } from 'node:os';
import path from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { CannotListen } from '../../server/cannot-listen.ts';
import { spareInitdb } from '../support/databases.ts';
import { temporaryFolder } from '../support/record.ts';
import { ServerProcess } from '../support/server-process.ts';

const HAS_IPV6 = (networkInterfaces()['lo'] ?? []).some(({ address }) => address === '::1');

describe('the program', () => {
  let folder: string;
  let remove: () => Promise<void>;
  beforeAll(async () => {
    ({ folder, remove } = await temporaryFolder());
    await spareInitdb(path.join(folder, 'database'));
  });
  afterAll(() => remove());

  const launch = (environment: NodeJS.ProcessEnv) =>
    ServerProcess.launch({
      ...{ dataFolder: folder, database: { kind: 'embedded', folder }, owner: false },
      environment,
    });
  const locks = async () => (await readdir(folder)).filter((name) => name.startsWith('lock.'));

  it.skipIf(!HAS_IPV6)(
    'listens at an address of IPv6, which stands in brackets (RFC 3986, 3.2.2)',
    async () => {
      const server = launch({ HOST: '::1' });
      await server.untilUp();
      expect(server.origin).toMatch(/^http:\/\/\[::1\]:\d+$/);
      const session = await fetch(`${server.origin}/api/v1/session`);
      expect(session.status).toBe(200);
      expect(await server.stop()).toEqual({ code: 0, signal: null });
      expect(await locks()).toEqual([]);
    },
  );

  const expectRefusal = async (environment: NodeJS.ProcessEnv, sentence: string) => {
    const server = launch(environment);
    expect(await server.ended).toEqual({ code: 1, signal: null });
    expect(server.complaints).toBe(sentence);
    expect(await locks()).toEqual([]);
  };

  const noAddress = (host: string) =>
    `There is no address “${host}” on this machine to listen at. Set HOST to one that it has, such as 127.0.0.1.`;

  // An address for documentation (RFC 5737).
  it('says of an address that this machine has not that nobody can listen there', () =>
    expectRefusal({ HOST: '192.0.2.1' }, `${noAddress('192.0.2.1')}\n`));

  // Looking a name up would ask the network: by the codes that the lookup answers.
  it.each(['ENOTFOUND', 'EAI_AGAIN'])('says the same of a name that nobody knows (%s)', (code) => {
    const cause = Object.assign(new Error(code), { code });
    expect(new CannotListen('nohost', 4310, cause).message).toBe(noAddress('nohost'));
  });

  it('names the port that is taken', async () => {
    const other = createServer();
    const port = await listening(other);
    await expectRefusal(
      { PORT: String(port) },
      `Port ${port} is taken by another program. Choose another one with PORT.\n`,
    );
    other.close();
  });

  it('says that a data folder is a file, or lies below one', async () => {
    const file = path.join(folder, 'a-file');
    await writeFile(file, '');
    const sentence = (wrong: string) =>
      `${wrong} cannot be the data folder: it is a file, or lies below one. Choose another with ARAKABE_DATA.\n`;
    await expectRefusal({ ARAKABE_DATA: file }, sentence(file));
    const below = path.join(file, 'data');
    await expectRefusal({ ARAKABE_DATA: below }, sentence(below));
    await expectRefusal({ ARAKABE_DATA: file, ...SERVED }, sentence(file));
  });

  it('names the file of roots that is not there, or holds none', async () => {
    const roots = path.join(folder, 'roots.pem');
    const environment = { ARAKABE_TIMESTAMP_URL: 'https://stamps.example.org', ARAKABE_TIMESTAMP_CA: roots };
    await expectRefusal(environment, `ARAKABE_TIMESTAMP_CA: there is no file ${roots} that can be read.\n`);
    await writeFile(roots, 'not a certificate');
    await expectRefusal(
      environment,
      `ARAKABE_TIMESTAMP_CA: the file ${roots} holds no certificate in PEM.\n`,
    );
  });

  it.each([
    ['hangs up', (socket: Socket) => void socket.once('data', () => socket.end())],
    ['says nothing', () => undefined],
  ])('says that what is there for the database %s', async (_, answer) => {
    const other = createServer(answer);
    const port = await listening(other);
    await expectRefusal(
      { DATABASE_URL: `postgres://someone@127.0.0.1:${port}/record` },
      'What is at DATABASE_URL does not answer as a PostgreSQL. Is it one, and is the address right?\n',
    );
    other.close();
  });

  it('says that the address of the database is none', () =>
    expectRefusal(
      { DATABASE_URL: 'postgres://someone@127.0.0.1:port/record' },
      'DATABASE_URL is no address of a database, such as postgres://user@host:5432/name.\n',
    ));
});

const SERVED = process.env['ARAKABE_TEST_POSTGRES']
  ? { DATABASE_URL: process.env['ARAKABE_TEST_POSTGRES'] }
  : {};

function listening(server: Server): Promise<number> {
  return new Promise((done) =>
    server.listen(0, '127.0.0.1', () => done((server.address() as AddressInfo).port)),
  );
}
