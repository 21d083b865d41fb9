import { expect, it } from 'vitest';
import {
  button,
  chooseFiles,
  drawn,
  eventually,
  goTo,
  heading,
  link,
  lookAtAll,
  makeAccount,
  openHouse,
  tick,
} from '../hands.ts';
import { photograph } from '../screens.ts';
import { damagedPhoto } from '../site-photos.ts';
import { EMAIL, ZONE, type Job } from './job.ts';

/** Line 6 repeats the mark of line 3. */
const SCHEDULE = [
  'mark,kind,name,place,wood',
  'い一,柱,corner post,north wall,hinoki',
  'い二,柱,,north wall,hinoki',
  'い三,柱,,north wall,hinoki',
  'い通り貫一,地貫,,north wall,cedar',
  'い二,柱,,south wall,hinoki',
  'い通り貫二,腰貫,,north wall,cedar',
  'ろ一,柱,,ろ line,cedar',
  'ろ二,柱,,ろ line,cedar',
  'い壁小舞,小舞,,north wall,bamboo',
].join('\r\n');

/** From the printed link to a house with its schedule and photographs. */
export function opening(job: Job): void {
  it('makes the first account through the printed link and opens a house', async () => {
    const { app, page, t } = job;
    await page.goto(`/link/${app.server.firstLink ?? ''}`);
    await heading(page, t('account.link.firstTitle')).waitFor();
    await makeAccount(page, t, 'Mio', EMAIL);
    job.house = await openHouse(page, t, 'Boathouse', ZONE);
    expect(job.house).toMatch(/^\/houses\/[0-9a-f-]{36}$/);
    // The link was good for one account.
    const second = await app.open();
    await second.goto(`/link/${app.server.firstLink ?? ''}`);
    await second.getByText(t('problems.code.link-used-or-expired')).waitFor();
    await second.context().close();
    expect(app.complaints(/40[0-9]|410/)).toEqual([]);
  });

  it('shows the bad row of a schedule with line and reason, and imports the rest when told to', async () => {
    const { page, t } = job;
    await goTo(page, t, 'members');
    await link(page, t('members.import')).click();
    await chooseFiles(page, button(page, t('schedule.choose')), [
      { name: 'frame.csv', mimeType: 'text/csv', buffer: Buffer.from(SCHEDULE) },
    ]);
    const bad = page.getByRole('table', { name: t('schedule.problems.title', { count: 1 }) });
    const cells = bad.getByRole('row').nth(1).getByRole('cell');
    await eventually(() => cells.allInnerTexts()).toEqual([
      '6',
      'mark',
      'い二',
      'The mark stands in line 3 already.',
    ]);
    expect(await button(page, t('schedule.agree')).isEnabled()).toBe(false);
    if (job.keepsPictures) await photograph(page, 'schedule-preview-en');
    await tick(page, t('schedule.problems.skip'));
    await eventually(() => button(page, t('schedule.agree')).isEnabled()).toBe(true);
    await button(page, t('schedule.agree')).click();
    await page.getByText('Imported: 8 members added, 0 members changed, 0 members retired.').waitFor();
    await page.getByText('1 row was left out.').waitFor();
    await link(page, t('schedule.toMembers')).click();
    const members = page.getByRole('list', { name: t('members.list') }).getByRole('listitem');
    await eventually(() => members.count()).toBe(8);
    expect(await members.first().innerText()).toContain('柱 hashira, post');
  });

  it('takes photographs in, refuses the damaged one in a sentence, and goes on', async () => {
    const { app, page, photos, t } = job;
    await goTo(page, t, 'photos');
    const { deck, box, cranes, house: suburb } = photos;
    await chooseFiles(page, button(page, t('photos.choose')), [
      deck,
      await damagedPhoto(),
      box,
      cranes,
      suburb,
    ]);
    await page.getByText('Finished: 4 added, 0 already here, 1 refused, 0 not sent.').waitFor();
    await page
      .getByText('truncated_before_sos.jpg is damaged and cannot be opened. Copy it from the camera again.')
      .waitFor();
    const tiles = page.getByRole('region', { name: /\d{4}$|^Without/ }).getByRole('listitem');
    await eventually(() => tiles.count()).toBe(4);
    await lookAtAll(tiles);
    await eventually(() => drawn(tiles.locator('img'))).toBe(4);
    // The newest first, in the zone of the site, the undated one last.
    const days = page.getByRole('heading', { level: 2, name: /\d{4}$|^Without/ });
    await eventually(() => days.allInnerTexts()).toEqual([
      'Tue, 5 May 2020',
      'Sun, 24 Feb 2002',
      'Wed, 11 Jul 2001',
      'Without a date',
    ]);
    await link(page, t('photos.list.toUndated', { count: 1 })).waitFor();
    // On the bench one walks on in order of capture.
    await page.getByRole('region', { name: 'Tue, 5 May 2020' }).getByRole('link').click();
    await page.getByText(t('bench.place', { at: '3', total: '4' })).waitFor();
    await link(page, t('bench.previous')).click();
    await page.getByText(t('bench.place', { at: '2', total: '4' })).waitFor();
    await goTo(page, t, 'photos');
    await chooseFiles(page, button(page, t('photos.choose')), [deck]);
    await page.getByText('Finished: 4 added, 1 already here, 1 refused, 0 not sent.').waitFor();
    await eventually(() => tiles.count()).toBe(4);
    expect(app.complaints(/422|415|400/)).toEqual([]);
  });
}
