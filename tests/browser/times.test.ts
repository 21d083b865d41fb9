import { randomUUID } from 'node:crypto';
import { afterAll, beforeAll, expect, it } from 'vitest';
import type { PhotoDetailView } from '#domain/contract/views';
import type { Words } from '../../client/i18n/words.ts';
import { wordsOf } from '../client/words.ts';
import { makeJpeg, takenAt } from '../support/pictures.ts';
import { describeInBrowser, startApp, type App } from './app.ts';
import { chooseFiles, signIn, eventually } from './hands.ts';
import { openScreen, photograph } from './screens.ts';
import { KEEPER, prepareSite, type Site } from './site.ts';

const PHONE = { viewport: { width: 390, height: 844 }, colorScheme: 'dark' } as const;

describeInBrowser('times put right by hand', () => {
  let app: App;
  let en: Words;
  let ja: Words;
  let site: Site;
  beforeAll(async () => {
    [en, ja] = [await wordsOf('en'), await wordsOf('ja')];
    app = await startApp();
    site = await prepareSite(app.server.origin, app.server.firstLink ?? '', 'Boathouse');
  });
  afterAll(() => app.close());

  it('a clock mark is made at a picture and withdrawn among the cameras', async () => {
    const page = await app.open();
    await page.goto('/');
    await signIn(page, en, KEEPER);
    await openScreen(page, `${site.things.house}/photos/${site.photos.house}`);
    await page.getByRole('button', { name: 'The clock in this picture' }).click();
    const field = page.getByLabel(/True time on site/);
    expect(await field.inputValue()).toBe('');
    const make = page.getByRole('button', { name: 'Make the clock mark' });
    await make.click();
    await page.getByText('Give the day and the time that the clock in the picture shows.').waitFor();
    await field.fill('2002-01-01T09:00:07');
    await page.getByText(/The camera’s clock was (slow|fast) by .* this camera moves? by/).waitFor();
    await make.click();
    await page.getByText('Look at the year, the month and the day once more.').waitFor();
    expect(await site.ledger('clock.marked')).toHaveLength(0);
    await photograph(page, 'clock-mark-dialog');
    await page.locator('label', { hasText: 'Yes, the clock was a day or more off' }).click();
    await make.click();
    await page
      .getByText(/corrected by/)
      .first()
      .waitFor();
    await photograph(page, 'bench-clock-corrected');
    const photo = await site.client.get<PhotoDetailView>(`/photos/${site.photos.house}`);
    expect(photo.capture).toMatchObject({ instant: '2002-01-01T00:00:07.000Z' });

    await page.getByRole('link', { name: 'Cameras and their clocks' }).click();
    await page.getByRole('button', { name: /Withdraw the clock mark/ }).waitFor();
    await photograph(page, 'cameras-marked');
    const phone = await app.open({ ...PHONE, locale: 'ja-JP' });
    await phone.goto('/');
    await signIn(phone, ja, KEEPER);
    await openScreen(phone, `${site.things.house}/cameras`);
    await photograph(phone, 'cameras-phone-dark-japanese');
    await openScreen(phone, `${site.things.house}/photos/${site.photos.house}`);
    await photograph(phone, 'bench-clock-phone-dark-japanese');
    await phone.getByRole('button', { name: ja('clock.mark.open') }).click();
    await phone.getByLabel(/正しい現場の日時/).fill('2002-01-01T09:00:07');
    await phone.getByText(ja('clock.mark.farOff')).waitFor();
    await photograph(phone, 'clock-mark-dialog-phone-dark-japanese');
    await phone.getByRole('button', { name: ja('common.cancel'), exact: true }).click();

    await page.getByRole('button', { name: /Withdraw the clock mark/ }).click();
    await page.getByRole('dialog').getByRole('button', { name: 'Withdraw', exact: true }).click();
    await page.getByText('Give the reason; it stays in the ledger.').waitFor();
    await page.getByRole('dialog').getByLabel('Reason').fill('another clock');
    await page.getByRole('dialog').getByRole('button', { name: 'Withdraw', exact: true }).click();
    await page.getByText('No clock mark yet').first().waitFor();
    await eventually(async () => (await site.ledger('clock.withdrawn')).length).toBe(1);
  });

  it('a photo without a time is dated by hand', async () => {
    const bare = await site.client.upload<{ results: { photo: { id: string } }[] }>(site.house.id, [
      { name: `${randomUUID()}.jpg`, bytes: await makeJpeg(77) },
    ]);
    const id = bare.results[0]?.photo.id ?? '';
    const page = await app.open();
    await page.goto('/');
    await signIn(page, en, KEEPER);
    await openScreen(page, `${site.things.house}/photos/${id}`);
    await page.getByRole('button', { name: 'Date this photo …' }).click();
    await page.getByRole('button', { name: 'Date the photo' }).click();
    await page.getByText('Give the day on which the photo was taken.').waitFor();
    await photograph(page, 'date-photo-dialog');
    await page.getByLabel('Day', { exact: true }).fill('2026-04-03');
    await page.locator('label', { hasText: 'some time that day' }).click();
    await page.getByLabel('How do you know?').fill('site diary');
    await page.getByRole('button', { name: 'Date the photo' }).click();
    await page
      .getByText(/Dated by Mio/)
      .first()
      .waitFor();
    await photograph(page, 'bench-dated-by-hand');
  });

  it('a photo that was added without a time, or too late, says so in its row', async () => {
    const page = await app.open();
    await page.goto('/');
    await signIn(page, en, KEEPER);
    await openScreen(page, `${site.things.house}/photos`);
    const file = async (seed: number, exif?: ReturnType<typeof takenAt>) => ({
      name: `${seed}.jpg`,
      mimeType: 'image/jpeg',
      buffer: await makeJpeg(seed, exif),
    });
    const files = [await file(78), await file(79, takenAt('2071-04-01T10:00:00'))];
    await chooseFiles(page, page.getByRole('button', { name: en('photos.choose') }), files);
    await page.getByText(en('photos.outcome.against.undated')).waitFor();
    await page.getByText(en('photos.outcome.against.after-upload')).waitFor();
    await photograph(page, 'upload-doubtful');
  });
});
