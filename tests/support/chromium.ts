import { existsSync } from 'node:fs';
import { chromium, type Browser } from 'playwright-core';
import places from './chromium-places.json' with { type: 'json' };

/** No sandbox because CI runs as root; the rest keeps the browser from calling out. */
const FLAGS = [
  '--headless',
  '--no-sandbox',
  '--disable-gpu',
  '--disable-quic',
  '--no-first-run',
  '--disable-background-networking',
  '--disable-component-update',
  '--disable-sync',
];

/** An installed Chromium, or undefined. */
export function findChromium(): string | undefined {
  const given = process.env['CHROMIUM_PATH'];
  return [...(given ? [given] : []), ...places].find((file) => existsSync(file));
}

export async function launchBrowser(): Promise<Browser> {
  const executablePath = findChromium();
  if (!executablePath) throw new Error('No Chromium was found; CHROMIUM_PATH names one.');
  return chromium.launch({ executablePath, args: FLAGS });
}
