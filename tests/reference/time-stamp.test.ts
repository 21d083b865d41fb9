import { createHash } from 'node:crypto';
import { readFile } from 'node:fs/promises';
import { setTimeout as rest } from 'node:timers/promises';
import { afterAll, afterEach, beforeAll, describe, expect, it } from 'vitest';
import { StampTrouble } from '../../server/services/stamps.ts';
import { readRoots } from '../../server/stamping/read-roots.ts';
import { timeStamps } from '../../server/stamping/time-stamps.ts';
import { HAS_OPENSSL, startStamps, type TestStamps } from '../support/test-stamps.ts';

/** A tree head: 32 bytes. */
const HEAD = Buffer.from(createHash('sha256').update('head').digest('hex'), 'hex');
const OTHER = createHash('sha256').update('another head').digest();

// Reference: OpenSSL's own time-stamp service and verifier (openssl-ts(1), Debian package `openssl`).
describe.skipIf(!HAS_OPENSSL)(
  'time stamps (RFC 3161); without the program openssl they are not tested',
  () => {
    let stamps: TestStamps;
    let roots: ReturnType<typeof readRoots>;
    beforeAll(async () => {
      stamps = await startStamps();
      roots = readRoots(await readFile(stamps.caFile, 'utf8'));
    });
    afterEach(() => {
      stamps.answer = null;
    });
    afterAll(() => stamps.close());

    const stamp = (settings = {}) => timeStamps({ url: stamps.url, roots, ...settings }).stamp(HEAD);
    const troubleOf = (stamping: Promise<unknown>) =>
      stamping.then(
        () => 'a stamp',
        (error: unknown) => (error instanceof StampTrouble ? error.reason : String(error)),
      );
    /** Lets a request be answered as if it had been another. */
    const instead = (change: (query: Buffer) => Buffer) => {
      stamps.answer = async (query) => ({ body: await stamps.reply(change(Buffer.from(query))) });
    };

    it('gets a stamp that OpenSSL accepts for the 32 bytes of the head, and for no other', async () => {
      const before = Date.now();
      const { token, at, by } = await stamp();
      expect(by).toBe('Test stamps of service');
      // genTime is to the second.
      expect(Date.parse(at)).toBeGreaterThanOrEqual(before - 1000);
      expect(Date.parse(at)).toBeLessThanOrEqual(Date.now() + 1000);
      expect(await stamps.verify(HEAD, token)).toBe(true);
      expect(await stamps.verify(OTHER, token)).toBe(false);
    });

    it('sends a query that OpenSSL reads as version 1, SHA-256 of the head, with a nonce and the certificate wanted', async () => {
      const queries: Buffer[] = [];
      stamps.answer = async (query) => {
        queries.push(query);
        return { body: await stamps.reply(query) };
      };
      await stamp();
      await stamp();
      const imprint = createHash('sha256').update(HEAD).digest();
      for (const query of queries) {
        const said = await stamps.read(query);
        expect(said).toMatch(/^Version: 1$/m);
        expect(said).toMatch(/^Hash Algorithm: sha256$/m);
        expect(said).toMatch(/^Nonce: 0x[0-9A-F]{16}$/m);
        expect(said).toMatch(/^Certificate required: yes$/m);
        expect(query.includes(imprint)).toBe(true);
      }
      expect(queries[0]?.equals(queries[1] as Buffer)).toBe(false);
    });

    it('takes a token of an unknown root where no root is named, and refuses it where one is', async () => {
      stamps.answer = async (query) => ({ body: await stamps.reply(query, 'stranger') });
      expect((await stamp({ roots: null })).by).toBe('Test stamps of stranger');
      expect(await troubleOf(stamp())).toBe('untrusted');
    });

    it('refuses a stamp of something else', async () => {
      instead((query) => {
        const at = query.indexOf(createHash('sha256').update(HEAD).digest());
        OTHER.copy(query, at);
        return query;
      });
      expect(await troubleOf(stamp())).toBe('another-head');
    });

    it('refuses an answer to another request: another nonce, and the same answer twice', async () => {
      // INTEGER of eight bytes, before the BOOLEAN that asks for the certificate.
      instead((query) => {
        const at = query.lastIndexOf(Buffer.from([0x02, 0x08])) + 9;
        query[at] = (query[at] ?? 0) ^ 1;
        return query;
      });
      expect(await troubleOf(stamp())).toBe('another-request');
      let first: Buffer | null = null;
      stamps.answer = async (query) => ({ body: (first ??= await stamps.reply(query)) });
      expect(await troubleOf(stamp())).toBe('a stamp');
      expect(await troubleOf(stamp())).toBe('another-request');
    });

    it('refuses a reply whose signature or whose signed time was altered', async () => {
      let whole: Buffer | null = null;
      stamps.answer = async (query) => {
        whole = await stamps.reply(query);
        // The last byte is of the signature.
        const last = whole.length - 1;
        whole[last] = (whole[last] ?? 0) ^ 1;
        return { body: whole };
      };
      expect(await troubleOf(stamp())).toBe('bad-signature');
      // In the signed time: GeneralizedTime of fifteen characters.
      stamps.answer = async (query) => {
        const body = await stamps.reply(query);
        const at = body.indexOf(Buffer.from([0x18, 0x0f])) + 2;
        body.write('1999', at);
        return { body };
      };
      expect(await troubleOf(stamp())).toBe('bad-signature');
    });

    it('tells a rejection from garbage and from silence', async () => {
      // A digest that the service does not take: status 2, rejection, from OpenSSL itself.
      instead((query) => {
        const sha256 = query.indexOf(Buffer.from('0609608648016503040201', 'hex'));
        query[sha256 + 10] = 0x09;
        return query;
      });
      expect(await troubleOf(stamp())).toBe('rejected');
      const bodies = ['', 'not here', '<html></html>', '\x30\x03\x30\x01\x00', '\x30\x82\xff\xff'];
      for (const body of bodies) {
        stamps.answer = () => Promise.resolve({ body: Buffer.from(body, 'latin1') });
        expect(await troubleOf(stamp()), JSON.stringify(body)).toBe('unreadable');
      }
      stamps.answer = () => Promise.resolve({ status: 503, body: Buffer.from('later') });
      expect(await troubleOf(stamp())).toBe('silent');
      stamps.answer = () => Promise.resolve({ body: Buffer.alloc(300 * 1024) });
      expect(await troubleOf(stamp())).toBe('silent');
      stamps.answer = async () => {
        await rest(400);
        return { body: Buffer.alloc(0) };
      };
      expect(await troubleOf(stamp({ patienceMs: 100 }))).toBe('silent');
      expect(await troubleOf(stamp({ url: 'http://127.0.0.1:1/' }))).toBe('silent');
    });
  },
);
