import type { Request } from 'express';
import { createServer, type Server } from 'node:http';
import { connect, type AddressInfo } from 'node:net';
import { describe, expect, it } from 'vitest';
import { AttemptLimit, networkOf } from '../../server/http/attempt-limit.ts';
import { hurry } from '../../server/http/hurry.ts';
import { SignInGuard } from '../../server/http/sign-in-guard.ts';
import { withoutSecrets } from '../../server/http/without-secrets.ts';
import { Failure } from '../../server/services/failure.ts';

const from = (ip: string) => ({ ip }) as Request;
const wrong = () => Promise.reject(new Failure('wrong-credentials'));
const right = () => Promise.resolve('in');

describe('guessing passwords (OWASP ASVS 4.0.3, 2.2.1)', () => {
  const clock = { at: 0 };
  const now = () => new Date(clock.at);
  const codeOf = (attempt: Promise<unknown>) =>
    attempt.then(
      () => 'in',
      (error: Failure) => error.code,
    );

  it('of one account from one network ends after ten, also when all are tried at once', async () => {
    const guard = new SignInGuard(now);
    const tries = Array.from({ length: 30 }, () =>
      codeOf(guard.attempt(from('192.0.2.1'), 'a@example.org', wrong)),
    );
    const codes = await Promise.all(tries);
    expect(codes.filter((code) => code === 'wrong-credentials')).toHaveLength(10);
    expect(codes.filter((code) => code === 'too-many-attempts')).toHaveLength(20);
    expect(await codeOf(guard.attempt(from('192.0.2.1'), 'A@example.org', right))).toBe('too-many-attempts');
    expect(await codeOf(guard.attempt(from('192.0.2.2'), 'a@example.org', right))).toBe('in');
    clock.at += 15 * 60_000;
    expect(await codeOf(guard.attempt(from('192.0.2.1'), 'a@example.org', right))).toBe('in');
  });

  it('of many accounts from one network ends after sixty, of one from many networks after a hundred an hour', async () => {
    const guard = new SignInGuard(now);
    const many = [];
    for (let i = 0; i < 70; i++)
      many.push(
        await codeOf(guard.attempt(from('2001:db8:1:2::' + i.toString(16)), `p${i}@example.org`, wrong)),
      );
    expect(many.filter((code) => code === 'wrong-credentials')).toHaveLength(60);
    const one = [];
    for (let i = 0; i < 110; i++)
      one.push(await codeOf(guard.attempt(from(`198.51.100.${i}`), 'one@example.org', wrong)));
    expect(one.filter((code) => code === 'wrong-credentials')).toHaveLength(100);
  });

  it('that was no guessing counts for nothing', async () => {
    const guard = new SignInGuard(now);
    for (let i = 0; i < 200; i++)
      expect(await codeOf(guard.attempt(from('203.0.113.1'), `q${i % 7}@example.org`, right))).toBe('in');
  });
});

it('limits hold a bounded number of names, whoever invents them', () => {
  const limit = new AttemptLimit(() => new Date(0), { attempts: 5, withinMs: 1000 });
  for (let i = 0; i < 100_000; i++) limit.begin(`name ${i}`);
  expect(limit.size).toBeLessThanOrEqual(20_000);
});

it('an address stands for its network: all of IPv4, the first half of IPv6', () => {
  expect(networkOf('192.0.2.1')).toBe('192.0.2.1');
  expect(networkOf('::ffff:192.0.2.1')).toBe('192.0.2.1');
  // RFC 4291 §2.5.4: the last 64 bits name an interface.
  expect(networkOf('2001:db8:1:2::3')).toBe(networkOf('2001:db8:1:2:ffff:1:2:3'));
  expect(networkOf('2001:db8:1:2::3')).not.toBe(networkOf('2001:db8:1:3::3'));
  expect(networkOf('2001:db8::1')).toBe('2001:db8:0:0');
  expect(networkOf('fe80::1%eth0')).toBe('fe80:0:0:0');
});

it('paths are logged without the secrets in them', () => {
  const secret = 'pZ3s_-'.repeat(8).slice(0, 43);
  expect(withoutSecrets(`/api/v1/links/${secret}`)).toBe('/api/v1/links/[secret]');
  expect(withoutSecrets('/api/v1/calendar/short')).toBe('/api/v1/calendar/[secret]');
  expect(withoutSecrets(`/link/${secret}`)).toBe('/link/[secret]');
  expect(withoutSecrets(`/api/v1/guest/${secret}/photo`)).toBe('/api/v1/guest/[secret]/photo');
  expect(withoutSecrets(`/api/v1/whatever/${secret}`)).toBe('/api/v1/whatever/[secret]');
  const house = '/api/v1/houses/00000000-0000-4000-8000-000000000000/calendar-link';
  expect(withoutSecrets(house)).toBe(house);
});

it('a body that drips is ended in time, one that arrives is not', async () => {
  const server = createServer((req, res) => {
    hurry(req, 300);
    req.resume().on('end', () => res.end('whole'));
    req.on('error', () => undefined);
  });
  await listening(server);
  const { port } = server.address() as AddressInfo;
  const head = 'POST / HTTP/1.1\r\nhost: x\r\nconnection: close\r\ncontent-length: 20\r\n\r\n';
  expect(await dripping(port, head, 20, 2)).toContain('whole');
  const started = performance.now();
  expect(await dripping(port, head, 20, 50)).not.toContain('whole');
  expect(performance.now() - started).toBeLessThan(950);
  await new Promise((resolve) => server.close(resolve));
});

/** What comes back to a body of which a byte is sent every so many milliseconds. */
function dripping(port: number, head: string, bytes: number, everyMs: number): Promise<string> {
  return new Promise((resolve) => {
    let heard = '';
    let [sent, timer] = [0, undefined as NodeJS.Timeout | undefined];
    const socket = connect(port, '127.0.0.1', () => {
      socket.write(head);
      timer = setInterval(() => (sent++ < bytes ? socket.write('x') : clearInterval(timer)), everyMs);
    });
    socket.on('data', (data) => (heard += data.toString()));
    socket.on('error', () => undefined);
    socket.on('close', () => {
      clearInterval(timer);
      resolve(heard);
    });
  });
}

function listening(server: Server): Promise<void> {
  return new Promise((resolve) => server.listen(0, '127.0.0.1', resolve));
}
