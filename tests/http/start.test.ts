import { readdir } from 'node:fs/promises';
import { networkInterfaces } from 'node:os';
import path from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
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

  // Addresses for documentation (RFC 5737) and a name that never resolves (RFC 6761, 6.4).
  it.each(['192.0.2.1', 'nohost.invalid'])('says of HOST=%s that nobody can listen there', async (host) => {
    const server = launch({ HOST: host });
    expect(await server.ended).toEqual({ code: 1, signal: null });
    expect(server.complaints).toBe(
      `There is no address “${host}” on this machine to listen at. Set HOST to one that it has, such as 127.0.0.1.\n`,
    );
    expect(await locks()).toEqual([]);
  });
});
