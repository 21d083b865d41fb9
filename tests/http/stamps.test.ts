import { createHash } from 'node:crypto';
import { afterAll, afterEach, beforeAll, beforeEach, describe, expect, it, vi } from 'vitest';
import type { StampsView } from '#domain/contract/stamps';
import type { HouseView, LedgerEntryView } from '#domain/contract/views';
import { housesToStamp, stampHead } from '../../server/services/stamp-heads.ts';
import { describeOverEitherDatabase, type PlaceForDatabase } from '../support/databases.ts';
import { newHouse, startServer, type TestServer } from '../support/server.ts';
import { HAS_OPENSSL, startStamps, type TestStamps } from '../support/test-stamps.ts';

const DAY_MS = 24 * 60 * 60 * 1000;

// Against OpenSSL's time-stamp service and verifier (openssl-ts(1)).
describe.skipIf(!HAS_OPENSSL)('without the program openssl, stamps are not tested', () => {
  describeOverEitherDatabase('stamped tree heads', (make) => {
    let place: PlaceForDatabase;
    let stamps: TestStamps;
    let server: TestServer;
    let house: HouseView;
    let ahead = 0;
    const now = () => new Date(Date.now() + ahead);
    beforeAll(async () => {
      [place, stamps] = await Promise.all([make(), startStamps()]);
      const timestamps = { url: stamps.url, caFile: stamps.caFile };
      server = await startServer(place, { now, config: { timestamps } });
    });
    beforeEach(async () => {
      house = await newHouse(server.owner);
    });
    afterEach(() => {
      stamps.answer = null;
    });
    afterAll(async () => {
      await server.close();
      await stamps.close();
      await place.remove();
    });

    const context = () => server.running.core.context;
    const told = () => server.owner.get<StampsView>(`/houses/${house.id}/stamps`);
    const ledger = () =>
      server.owner.get<{ entries: LedgerEntryView[]; size: number }>(`/houses/${house.id}/ledger`);
    const write = (text: string) => server.owner.put(`/houses/${house.id}/days/2026-04-01/note`, { text });

    it('stand in the ledger with a token that OpenSSL accepts for the head of that size', async () => {
      await write('Rain.');
      const { entries: before } = await ledger();
      expect(await stampHead(context(), house.id)).toBeNull();
      const { entries } = await ledger();
      const entry = entries.at(-1);
      expect(entry).toMatchObject({ kind: 'head.stamped', by: null });
      const payload = entry?.payload as { size: number; head: string; token: string; at: string };
      expect(payload).toMatchObject({ size: before.length, head: before.at(-1)?.head });
      const token = Buffer.from(payload.token, 'base64');
      expect(await stamps.verify(Buffer.from(payload.head, 'hex'), token)).toBe(true);
      const another = createHash('sha256').update('another').digest();
      expect(await stamps.verify(another, token)).toBe(false);
      expect(await told()).toEqual({
        isConfigured: true,
        last: {
          seq: entry?.seq,
          size: before.length,
          head: payload.head,
          at: payload.at,
          by: 'Test stamps of service',
        },
        trouble: null,
      });
    });

    it('are asked for once a day, and only when something else than a stamp was said', async () => {
      expect(await housesToStamp(context())).toContain(house.id);
      await stampHead(context(), house.id);
      const { size } = await ledger();
      expect(await housesToStamp(context())).not.toContain(house.id);
      ahead += DAY_MS + 1000;
      expect(await housesToStamp(context())).toContain(house.id);
      await stampHead(context(), house.id);
      expect((await ledger()).size).toBe(size);
      await write('Sun.');
      await stampHead(context(), house.id);
      expect((await ledger()).size).toBe(size + 2);
    });

    it('are asked for by a statement that wants one, when it is committed, by a job', async () => {
      const by = { id: 'somebody', name: 'Somebody' };
      await context().store.write(house.id, by, async (writing) => {
        await writing.say({
          kind: 'note.written',
          version: 1,
          payload: { day: '2026-04-02', text: 'Snow.' },
        });
        await writing.requestStamp();
      });
      await vi.waitFor(async () => expect((await told()).last?.size).toBe(3), { timeout: 8000 });
    });

    it('are none where the service gives none: that is told, asked for again, and stops nobody', async () => {
      stamps.answer = () => Promise.resolve({ status: 500, body: Buffer.alloc(0) });
      expect(await stampHead(context(), house.id)).toMatchObject({ reason: 'silent' });
      expect(await told()).toMatchObject({ last: null, trouble: { reason: 'silent' } });
      stamps.answer = async (query) => ({ body: await stamps.reply(query, 'stranger') });
      expect(await stampHead(context(), house.id)).toMatchObject({ reason: 'untrusted' });
      expect(await told()).toMatchObject({ last: null, trouble: { reason: 'untrusted' } });
      await write('Wind.');
      expect(await housesToStamp(context())).toContain(house.id);
      stamps.answer = null;
      await stampHead(context(), house.id);
      expect(await told()).toMatchObject({ last: { size: 3 }, trouble: null });
    });
  });
});
