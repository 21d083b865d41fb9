import { expect } from 'vitest';
import type { Locator, Page } from 'playwright-core';
import type { Words } from '../../client/i18n/words.ts';
import type { SitePhoto } from './site-photos.ts';

/** What a person's eyes and hands do on the screens, found by role and name as a screen reader finds it. */

export const PASSWORD = 'a long enough password';

/** Waits until what is read off the screen is as it should be. */
export const eventually = <T>(read: () => Promise<T> | T) => expect.poll(read, { timeout: 20_000 });

export const button = (within: Page | Locator, name: string | RegExp) =>
  within.getByRole('button', { name, exact: true });
/** What is said in a review of the member that is looked at, whichever it is. */
export const answerButton = (within: Page | Locator, words: string) =>
  within.getByRole('button', { name: new RegExp(`^\\S+ ${words}$`) });
export const link = (within: Page | Locator, name: string | RegExp) =>
  within.getByRole('link', { name, exact: true });
export const heading = (page: Page, name: string | RegExp) =>
  page.getByRole('heading', { name, exact: true, level: 1 });
export const field = (within: Page | Locator, label: string) => within.getByLabel(label, { exact: true });
export const row = (within: Locator, start: string) =>
  within
    .getByRole('row')
    .filter({ has: within.page().getByRole('rowheader').getByText(start, { exact: true }) });

/** A tick is drawn over the real box, so a person presses its words. */
export async function tick(within: Page | Locator, name: string | RegExp): Promise<void> {
  const box = within.getByRole('checkbox', { name });
  await box.locator('xpath=ancestor::label').click();
  await eventually(() => box.isChecked()).toBe(true);
}

export async function goTo(
  page: Page,
  t: Words,
  part: 'photos' | 'members' | 'coverings' | 'report' | 'findings' | 'people' | 'journal',
): Promise<void> {
  await link(page.getByRole('navigation', { name: t('common.houseMenu') }), t(`common.nav.${part}`)).click();
  const title = part === 'journal' ? t('days.title') : t(`${part}.title`);
  await heading(page, title).waitFor();
}

export async function makeAccount(page: Page, t: Words, name: string, email?: string): Promise<void> {
  await field(page, t('account.link.name')).fill(name);
  if (email !== undefined) await field(page, t('account.signIn.email')).fill(email);
  await field(page, t('account.signIn.password')).fill(PASSWORD);
  await button(page, t('account.link.submit')).click();
  await button(page, t('common.signOut')).waitFor();
}

export async function signIn(page: Page, t: Words, email: string): Promise<void> {
  await field(page, t('account.signIn.email')).fill(email);
  await field(page, t('account.signIn.password')).fill(PASSWORD);
  await button(page, t('account.signIn.submit')).click();
  await button(page, t('common.signOut')).waitFor();
}

/** Opens the record of a house and resolves to its address. */
export async function openHouse(page: Page, t: Words, name: string, zone: string): Promise<string> {
  await field(page, t('houses.fields.name')).fill(name);
  const zones = page.getByRole('combobox', { name: t('houses.fields.zone') });
  await zones.fill(zone.split('/')[1] ?? zone);
  await page.getByRole('option', { name: zone, exact: true }).click();
  await button(page, t('houses.submit')).click();
  await heading(page, t('days.title')).waitFor();
  return new URL(page.url()).pathname;
}

export async function chooseFiles(page: Page, chooser: Locator, files: readonly SitePhoto[]): Promise<void> {
  const [dialog] = await Promise.all([page.waitForEvent('filechooser'), chooser.click()]);
  await dialog.setFiles([...files]);
}

export const hasFocus = (element: Locator): Promise<boolean> =>
  element.evaluate((node) => node === document.activeElement);

/** How many of these pictures have really been drawn. */
export const drawn = (images: Locator): Promise<number> =>
  images.evaluateAll(
    (all) =>
      all.filter((image) => image instanceof HTMLImageElement && image.complete && image.naturalWidth > 0)
        .length,
  );

/** Goes through the whole list, so that what loads only in sight is in sight once. */
export async function lookAtAll(items: Locator): Promise<void> {
  for (const item of await items.all()) await item.scrollIntoViewIfNeeded();
}
