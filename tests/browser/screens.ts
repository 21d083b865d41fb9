import { mkdir } from 'node:fs/promises';
import path from 'node:path';
import type { Page } from 'playwright-core';
import { ROOT } from '../support/project-files.ts';

const FOLDER = path.join(ROOT, 'test-results', 'browser');

/** Where a picture of a screen goes, for people to look at; the folder is not kept in the repository. */
export async function resultFile(name: string): Promise<string> {
  await mkdir(FOLDER, { recursive: true });
  return path.join(FOLDER, name);
}

/** Where nobody looks at the pictures, none are made: they take a good part of the time. */
export const isLookedAt = process.env['CI'] !== 'true';

/** The whole screen with its pictures; of a dialog only what is in the window, since its veil ends there. */
export async function photograph(page: Page, name: string): Promise<void> {
  if (!isLookedAt) return;
  const isAsking = await page.evaluate(async () => {
    for (const image of Array.from(document.images)) image.loading = 'eager';
    await Promise.all(Array.from(document.images, (image) => image.decode().catch(() => undefined)));
    return document.querySelector('.dialog-veil') !== null;
  });
  await page.screenshot({ path: await resultFile(`${name}.png`), fullPage: !isAsking });
}

export interface HouseThings {
  /** Path of the house, /houses/{id}. */
  readonly house: string;
  readonly photo: string;
  readonly mark: string;
  readonly covering: string;
  readonly day: string;
}

/** Every screen of a house by a name for its picture. */
export function houseScreens({ house, photo, mark, covering, day }: HouseThings): Record<string, string> {
  return {
    journal: house,
    day: `${house}/days/${day}`,
    photos: `${house}/photos`,
    plan: `${house}/plan`,
    bench: `${house}/photos/${photo}`,
    frame: `${house}/frame`,
    members: `${house}/members`,
    member: `${house}/members/${encodeURIComponent(mark)}`,
    lexicon: `${house}/lexicon`,
    term: `${house}/lexicon/toshibashira`,
    'term-new': `${house}/lexicon/new`,
    'term-change': `${house}/lexicon/nuki/change`,
    schedule: `${house}/schedule`,
    coverings: `${house}/coverings`,
    'covering-new': `${house}/coverings/new`,
    covering: `${house}/coverings/${covering}`,
    'covering-review': `${house}/coverings/${covering}/review`,
    'covering-change': `${house}/coverings/${covering}?change`,
    needs: `${house}/needs`,
    report: `${house}/report`,
    'shots-no-grid': `${house}/shots?days=all`,
    findings: `${house}/findings`,
    people: `${house}/people`,
    cameras: `${house}/cameras`,
    ledger: `${house}/ledger`,
    settings: `${house}/settings`,
    grid: `${house}/grid`,
  };
}

/** Goes to an address and waits until the screen stands: a heading, nothing that turns, no picture on its way. */
export async function openScreen(page: Page, address: string): Promise<void> {
  await page.goto(address);
  await page.getByRole('heading', { level: 1 }).waitFor();
  await page.waitForFunction(
    () =>
      !document.querySelector('[aria-busy=true], .spinner') &&
      Array.from(document.images).every((image) => image.complete || image.loading === 'lazy') &&
      document.fonts.status === 'loaded',
  );
}
