import { execFile } from 'node:child_process';
import path from 'node:path';
import { promisify } from 'node:util';
import { expect, it } from 'vitest';
import { ROOT } from '../support/project-files.ts';
import { temporaryFolder } from '../support/record.ts';
import { Client, OWNER } from '../support/server.ts';
import { ServerProcess, type Place } from '../support/server-process.ts';

it('prints a link for a new password by which one comes in, with its end', { timeout: 180_000 }, async () => {
  const { folder, remove } = await temporaryFolder();
  const place: Place = { dataFolder: folder, database: { kind: 'embedded', folder } };
  await (await ServerProcess.start(place)).stop();
  const make = async (more: Record<string, string>) => {
    const env = { PATH: process.env['PATH'], HOME: process.env['HOME'], ARAKABE_DATA: folder, ...more };
    const args = [path.join(ROOT, 'server/start.mjs'), 'reset-link', OWNER.email];
    return (await promisify(execFile)(process.execPath, args, { cwd: ROOT, env })).stdout;
  };
  const until = String.raw`A link for a new password of ${OWNER.email}, to be used once, until `;
  const time = String.raw`\d{1,2} \w{3,4} \d{4}, \d\d:\d\d`;
  // Tokyo keeps UTC+9 all year (tz database, file asia).
  const whole = await make({ TZ: 'Asia/Tokyo', ARAKABE_URL: 'https://record.example.org/' });
  expect(whole).toMatch(
    new RegExp(
      `${until}${time} \\(Asia/Tokyo, UTC\\+09:00\\):\\nhttps://record\\.example\\.org/link/\\S+\\n$`,
      'u',
    ),
  );
  const bare = await make({ TZ: 'UTC', PORT: '4999' });
  expect(bare).toMatch(
    new RegExp(
      `${until}${time} \\(UTC, UTC\\+00:00\\):\\n/link/\\S+\\nPut before it .*http://127\\.0\\.0\\.1:4999`,
      'u',
    ),
  );
  const everywhere = await make({ HOST: '0.0.0.0' });
  expect(everywhere).not.toContain('0.0.0.0');
  // Each new one ends the one before.
  const secret = /\/link\/(\S+)/u.exec(everywhere)?.[1] ?? '';
  const server = await ServerProcess.start(place);
  const client = new Client(server.origin);
  await client.post(`/links/${secret}/password`, { password: 'another long password' });
  await client.post('/session', { email: OWNER.email, password: 'another long password' });
  await server.stop();
  await remove();
});
