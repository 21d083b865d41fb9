import { spawn } from 'node:child_process';
import { existsSync } from 'node:fs';
import { readFile } from 'node:fs/promises';
import path from 'node:path';
import { expect, it } from 'vitest';
import type { HouseView } from '#domain/contract/views';
import { THIS_MORNING } from '../../server/demo/story/build-time.ts';
import { ROOT } from '../support/project-files.ts';

/** `npm run demo` as it is built, in a process of its own. */
function startCommand() {
  const child = spawn(process.execPath, [path.join(ROOT, 'dist/server/demo.js'), '--no-browser'], {
    ...{ cwd: ROOT, stdio: ['ignore', 'pipe', 'inherit'] },
    env: { PATH: process.env['PATH'], HOME: process.env['HOME'] },
  });
  let said = '';
  child.stdout?.setEncoding('utf8').on('data', (text: string) => (said += text));
  const atExit = () => void child.kill('SIGKILL');
  process.once('exit', atExit);
  const ended = new Promise<number | null>((resolve) =>
    child.once('close', (code) => {
      process.off('exit', atExit);
      resolve(code);
    }),
  );
  const until = async (pattern: RegExp): Promise<string> => {
    for (;;) {
      const found = pattern.exec(said)?.[1];
      if (found !== undefined) return found;
      if (child.exitCode !== null) throw new Error(`It ended. It said: ${said}`);
      await new Promise((resolve) => setTimeout(resolve, 50));
    }
  };
  return { ended, until, stop: () => child.kill('SIGTERM'), said: () => said };
}

it(
  'opens the house to whoever goes in by a door, and removes all when it is stopped',
  { timeout: 240_000 },
  async () => {
    const command = startCommand();
    const door = await command.until(/(http:\/\/localhost:\d+\/carpenter)/);
    const folder = await command.until(/It lies in (\S+), and/);
    expect(existsSync(folder)).toBe(true);
    const since = 'four weeks after its raising';
    expect(command.said()).toContain(since);
    expect(await readFile(path.join(ROOT, 'README.md'), 'utf8')).toContain(since);
    expect(Math.floor(THIS_MORNING / 7)).toBe(4);

    const sent = await fetch(door, { redirect: 'manual' });
    expect(sent.status).toBe(303);
    const to = new URL(sent.headers.get('location') ?? '');
    expect(to.hostname).toBe(new URL(door).hostname);
    const headers = { cookie: sent.headers.getSetCookie()[0]?.split(';')[0] ?? '' };
    const house = await fetch(`${to.origin}/api/v1${to.pathname}`, { headers });
    expect(((await house.json()) as HouseView).name).toBe('谷の舟小屋');
    const screen = await fetch(to, { headers });
    expect(await screen.text()).toContain('<div id="root">');

    command.stop();
    expect(await command.ended).toBe(0);
    expect(existsSync(folder)).toBe(false);
    expect(command.said()).toContain(`Removed ${folder}.`);
  },
);

it(
  'removes what it has written also when it is stopped before it is ready',
  { timeout: 240_000 },
  async () => {
    const command = startCommand();
    await command.until(/(Opening the record)/);
    command.stop();
    expect(await command.ended).toBe(0);
    expect(command.said()).toMatch(/Removed what it had written\.\n$/);
  },
);
