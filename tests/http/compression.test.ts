import { readFile } from 'node:fs/promises';
import path from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { ROOT } from '../support/project-files.ts';
import { newHouse, startServer, type TestServer } from '../support/server.ts';

const schedule = ['mark,kind', ...Array.from({ length: 200 }, (_, i) => `rail ${i},nuki`)].join('\r\n');

describe('what is compressed', () => {
  let server: TestServer;
  let house: string;
  const ask = (address: string, codings: string) =>
    server.owner.raw('GET', address, { headers: { 'accept-encoding': codings } });
  const askFile = (address: string, codings: string) =>
    fetch(server.running.origin + address, { headers: { 'accept-encoding': codings } });

  beforeAll(async () => {
    server = await startServer({
      config: { kind: 'embedded', folder: 'in the data folder' },
      remove: () => Promise.resolve(),
    });
    ({ id: house } = await newHouse(server.owner));
    await server.owner.raw('POST', `/houses/${house}/schedule`, {
      body: schedule,
      headers: { 'content-type': 'text/csv' },
    });
  });
  afterAll(() => server.close());

  it.each([
    ['gzip, deflate, br', 'br'],
    ['gzip', 'gzip'],
    ['identity', null],
    ['br;q=0, gzip', 'gzip'],
  ])(
    'gives a browser that reads %s the script as %s, the same to the byte and for ever',
    async (codings, coding) => {
      const page = await (await fetch(`${server.running.origin}/`)).text();
      const [script] = /\/assets\/index-[\w-]+\.js/.exec(page) ?? [''];
      const response = await askFile(script, codings);
      expect(response.headers.get('content-encoding')).toBe(coding);
      expect(response.headers.get('content-type')).toMatch(/^text\/javascript/);
      expect(response.headers.get('cache-control')).toBe('public, max-age=31536000, immutable');
      expect(response.headers.get('vary')).toMatch(/accept-encoding/i);
      const built = await readFile(path.join(ROOT, 'dist', 'client', script));
      expect(Buffer.from(await response.arrayBuffer()).equals(built)).toBe(true);
    },
  );

  it('compresses a long answer, and no answer to a POST, which may hold a secret', async () => {
    const members = await ask(`/houses/${house}/members`, 'gzip');
    expect(members.headers.get('content-encoding')).toBe('gzip');
    expect(((await members.json()) as { members: unknown[] }).members).toHaveLength(200);
    const hides = Array.from({ length: 200 }, (_, i) => ({ mark: `rail ${i}`, least: 'pegged' }));
    const made = await server.owner.raw('POST', `/houses/${house}/coverings`, {
      body: JSON.stringify({
        id: crypto.randomUUID(),
        name: 'North',
        kind: 'plaster',
        plannedDay: '2026-05-01',
        hides,
      }),
      headers: { 'content-type': 'application/json', 'accept-encoding': 'gzip' },
    });
    expect((await made.clone().text()).length).toBeGreaterThan(2000);
    expect(made.headers.get('content-encoding')).toBeNull();
  });

  it('never makes the event stream wait for more to compress', async () => {
    const response = await ask(`/houses/${house}/events`, 'gzip');
    expect(response.headers.get('content-encoding')).toBeNull();
    const { value } = (await response.body?.getReader().read()) ?? {};
    expect(Buffer.from(value ?? []).toString()).toMatch(/^retry: 2000\n\n/);
  });
});
