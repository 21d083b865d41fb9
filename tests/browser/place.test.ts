import { afterAll, afterEach, beforeAll, expect, it } from 'vitest';
import type { BrowserContextOptions, Page } from 'playwright-core';
import type { PhotoPlaceView } from '#domain/contract/views';
import type { Words } from '../../client/i18n/words.ts';
import { makeJpeg, takenAt } from '../support/pictures.ts';
import { wordsOf } from '../client/words.ts';
import { describeInBrowser, startApp, type App } from './app.ts';
import { button, chooseFiles, eventually, field, signIn } from './hands.ts';
import { openScreen, photograph, resultFile } from './screens.ts';
import { KEEPER, prepareSite, type Site } from './site.ts';

const SITE = { lat: 35.0116, lon: 135.7681, radiusM: 100 };
const HERE = { latitude: 35.0114, longitude: 135.7678, accuracy: 14 };
const PHONE = { viewport: { width: 390, height: 844 }, deviceScaleFactor: 2, hasTouch: true, isMobile: true };

/** Exif GPS of a phone: seconds of latitude and longitude beside 35° 0′, 135° 46′. */
const gps = (lat: number, lon: number, degrees: number, error: number) => ({
  ...{ GPSLatitudeRef: 'N', GPSLatitude: `35/1 0/1 ${lat * 100}/100` },
  ...{ GPSLongitudeRef: 'E', GPSLongitude: `135/1 46/1 ${lon * 100}/100` },
  ...{ GPSImgDirectionRef: 'M', GPSImgDirection: `${degrees}/1`, GPSHPositioningError: `${error}/1` },
});

describeInBrowser('the place of photos', () => {
  let app: App;
  let site: Site;
  let where: string;
  beforeAll(async () => {
    app = await startApp();
    site = await prepareSite(app.server.origin, app.server.firstLink ?? '', 'Boathouse');
    const add = async (seed: number, place: Record<string, string>) => {
      const exif = { ...takenAt(`2026-04-0${seed}T09:30:00`), FocalLengthIn35mmFilm: '26' };
      const bytes = await makeJpeg(seed, exif, { width: 1600, height: 1200 }, place);
      const { results } = await site.client.upload<{ results: { photo: { id: string } }[] }>(site.house.id, [
        { name: `place-${seed}.jpg`, bytes },
      ]);
      return results[0]?.photo.id ?? '';
    };
    where = await add(1, gps(43, 6.5, 255, 10));
    await add(2, gps(40, 3.5, 40, 5));
    await add(3, gps(38.5, 4, 10, 60));
    await add(4, gps(59, 30, 180, 20));
    await site.client.patch(site.things.house, { site: SITE });
  });
  afterEach(() => expect(app.complaints()).toEqual([]));
  afterAll(() => app.close());

  const enter = async (lang: 'en' | 'ja', options: BrowserContextOptions = {}): Promise<[Page, Words]> => {
    const page = await app.open({ ...options, locale: lang === 'ja' ? 'ja-JP' : 'en-GB' });
    const t = await wordsOf(lang);
    await page.goto('/');
    await signIn(page, t, KEEPER);
    return [page, t];
  };
  const bare = async (seed: number) => ({
    name: `bare-${seed}.jpg`,
    mimeType: 'image/jpeg',
    buffer: await makeJpeg(seed, takenAt('2026-04-01T10:00:00')),
  });
  const devices = async () => {
    const { photos } = await site.client.get<{ photos: PhotoPlaceView[] }>(
      `${site.things.house}/photo-places`,
    );
    return photos.flatMap(({ fileName, place }) => (place.device ? [{ fileName, ...place.device }] : []));
  };

  it('is said to be missing at upload, and that of the device is put beside it by one press', async () => {
    const [page, t] = await enter('en', { geolocation: HERE, permissions: ['geolocation'] });
    await openScreen(page, `${site.things.house}/photos`);
    await chooseFiles(page, button(page, t('photos.choose')), [await bare(21), await bare(22)]);
    await page.getByText(t('place.upload.lead', { count: 2 })).waitFor();
    await eventually(() => page.getByText(t('place.upload.row'), { exact: true }).count()).toBe(2);
    await photograph(page, 'place-upload');
    await button(page, t('place.upload.button', { count: 2 })).click();
    await page.getByText(t('place.upload.done', { count: 2, error: '14 m' })).waitFor();
    await eventually(() => page.getByText(t('place.upload.rowDevice'), { exact: true }).count()).toBe(2);
    const found = await devices();
    expect(found).toHaveLength(2);
    expect(found[0]).toMatchObject({
      lat: HERE.latitude,
      lon: HERE.longitude,
      errorM: 14,
      by: { name: 'Mio' },
    });
    await page.context().close();
  });

  it('says plainly that the browser may not tell, and loses nothing', async () => {
    const [page, t] = await enter('ja', { ...PHONE, permissions: [] });
    await openScreen(page, `${site.things.house}/photos`);
    await chooseFiles(page, button(page, t('photos.choose')), [await bare(23)]);
    await button(page, t('place.upload.button', { count: 1 })).click();
    await page.getByText(t('place.upload.denied')).waitFor();
    await photograph(page, 'place-upload-denied-ja');
    await page.getByText(t('place.upload.row'), { exact: true }).waitFor();
    expect(await devices()).toHaveLength(2);
    await page.context().close();
  });

  it('says that browsers give the position only over https', async () => {
    const [page, t] = await enter('en');
    // As the browser tells it on a plain-http address of the site's network.
    await page.addInitScript(() => Object.defineProperty(window, 'isSecureContext', { get: () => false }));
    await openScreen(page, `${site.things.house}/photos`);
    await chooseFiles(page, button(page, t('photos.choose')), [await bare(24)]);
    await page.getByText(t('place.upload.needsHttps')).waitFor();
    expect(await button(page, t('place.upload.button', { count: 1 })).count()).toBe(0);
    await page.context().close();
  });

  it('stands at the photo, on a plan and in words', async () => {
    for (const [lang, options, name] of [
      ['en', {}, 'desktop'],
      ['en', { colorScheme: 'dark' }, 'dark'],
      ['ja', PHONE, 'phone-ja'],
    ] as const) {
      const [page, t] = await enter(lang, options);
      await openScreen(page, `${site.things.house}/photos/${where}`);
      const plan = page.getByRole('img', { name: t('place.plan.label') });
      const words =
        lang === 'ja'
          ? /北東へ 5\d m、誤差 ±10 m、西南西向き/
          : /5\d m north-east of .*, ± 10 m, looking west-south-west/;
      await page.getByRole('img', { name: words }).scrollIntoViewIfNeeded();
      await page.screenshot({ path: await resultFile(`place-bench-${name}.png`) });
      await openScreen(page, `${site.things.house}/plan`);
      await plan.waitFor();
      await photograph(page, `place-plan-${name}`);
      await page.context().close();
    }
  });

  it('can be taken for the site from the photos, and is refused plainly where it is none', async () => {
    const [page, t] = await enter('en');
    await openScreen(page, `${site.things.house}/settings`);
    await button(page, t('place.settings.fromPhotos')).click();
    await eventually(() => field(page, t('houses.fields.site')).inputValue()).toMatch(
      /^35\.01\d+, 135\.7\d+$/,
    );
    await field(page, t('place.settings.radius')).fill('5 km');
    await button(page, t('common.save')).click();
    await page.getByText(t('place.settings.radiusWrong')).waitFor();
    await photograph(page, 'place-settings');
    await field(page, t('houses.fields.site')).fill('(35.0116, 135.7681)');
    await field(page, t('place.settings.radius')).fill('１２０');
    await button(page, t('common.save')).click();
    await page.getByText(t('houses.settings.saved')).waitFor();
    const { site: saved } = await site.client.get<{ site: object }>(site.things.house);
    expect(saved).toEqual({ ...SITE, radiusM: 120 });
    await page.context().close();
  });
});
