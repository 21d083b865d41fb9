import { spawn } from 'node:child_process';

const OPENERS: Readonly<Partial<Record<NodeJS.Platform, readonly [program: string, ...before: string[]]>>> = {
  darwin: ['open'],
  // The empty argument is the title of a window, which `start` takes first.
  win32: ['cmd', '/c', 'start', ''],
};

/** Whoever has no browser here has the address in print. */
export function openBrowser(address: string): void {
  const [program, ...before] = OPENERS[process.platform] ?? ['xdg-open'];
  const opener = spawn(program, [...before, address], { stdio: 'ignore', detached: true });
  opener.on('error', () => undefined);
  opener.unref();
}
