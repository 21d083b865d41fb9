import { readFile } from 'node:fs/promises';
import { parse } from 'csv-parse/sync';
import { expect, it } from 'vitest';
import type { Page } from 'playwright-core';
import { dayIn, formatDay } from '../../../client/i18n/format.ts';
import type { Words } from '../../../client/i18n/words.ts';
import { button, drawn, eventually, field, goTo, heading, link, lookAtAll, row, tick } from '../hands.ts';
import { photograph, resultFile } from '../screens.ts';
import { COVERING, NOTE, ZONE, type Job } from './job.ts';

const IN_TEN_DAYS = dayIn(ZONE, new Date(Date.now() + 10 * 86_400_000));

/** Coverings, the report before and after closing, histories and the journal. */
export function reporting(job: Job): void {
  it('plans a covering over four members, each with its least stage', async () => {
    const { page, t } = job;
    await goTo(page, t, 'coverings');
    await link(page, t('coverings.add')).first().click();
    await field(page, t('coverings.form.name')).fill(COVERING);
    await field(page, t('coverings.form.day')).fill(IN_TEN_DAYS);
    const members = page.getByRole('list', { name: t('coverings.form.members') });
    for (const mark of ['い二', 'い三', 'い通り貫一', 'ろ二']) await tick(members, new RegExp(`^${mark} `));
    await page.getByText('4 members ticked', { exact: true }).waitFor();
    await field(page, t('coverings.form.leastAll')).selectOption('pegged');
    await field(page, t('coverings.form.leastFor', { mark: 'い二' })).selectOption('raised');
    if (job.keepsPictures) await photograph(page, 'covering-form-en');
    await button(page, t('coverings.form.save')).click();
    await heading(page, COVERING).waitFor();
  });

  it('reports what is on record, what is missing, and how nearly', async () => {
    const { page, t } = job;
    await goTo(page, t, 'report');
    await page.getByText('In all: 4 hidden, 1 on record, 3 without a record, 0 lost.').waitFor();
    await page
      .getByText('4 members of the schedule are not in any covering: nothing planned hides them.')
      .waitFor();
    await page.getByRole('heading', { level: 2, name: `Closing ${formatDay(IN_TEN_DAYS, 'en')}` }).waitFor();
    await page.getByText('10 days left', { exact: true }).first().waitFor();
    // い三 was changed to pegged on the photo of the house; the others by hand from what was tagged above.
    expect(await line(page, t, 'い三')).toMatch(/on record\s+pegged, 24 Feb 2002, 13:43/);
    expect(await line(page, t, 'い通り貫一')).toContain(
      'photographed, but before the stage “pegged” (raised, 11 Jul 2001, 11:18)',
    );
    expect(await line(page, t, 'ろ二')).toContain('photographed, but the photo has no date (pegged)');
    expect(await line(page, t, 'い二')).toContain('tagged on no photo');
    const marks = linesOf(page, t).getByRole('rowheader').getByRole('link');
    expect((await marks.allInnerTexts()).at(-1)).toBe('い三');
    if (job.keepsPictures)
      await page.pdf({ path: await resultFile('report-open.pdf'), preferCSSPageSize: true });
    await tick(page, t('report.onlyGaps'));
    await eventually(() => marks.count()).toBe(3);
  });

  it('tells the history of a member, with crops that are pictures', async () => {
    const { page, t } = job;
    await page.goto(`${job.house}/members/${encodeURIComponent('い三')}`);
    const stages = page.getByRole('table', { name: t('members.history.stages') });
    await stages.waitFor();
    const known = async (stage: string) =>
      (await row(stages, stage).getByRole('cell').innerText()).split('\n')[0];
    expect(await known('cut')).toBe(
      'raised by 11 Jul 2001, 11:18, so cut before that; no photo shows this stage itself',
    );
    expect(await known('raised')).toBe('by 11 Jul 2001, 11:18; no photo is from before this stage');
    expect(await known('pegged')).toBe('after 11 Jul 2001, 11:18, and by 24 Feb 2002, 13:43');
    expect(await known('lath on')).toBe('not yet on 24 Feb 2002, 13:43; no photo since');
    const crops = page.getByRole('img', { name: /^い三 on / });
    // Raised on the cranes, pegged on the house; folded, what was said there first and replaced.
    await eventually(() => crops.count()).toBe(2);
    await page.getByText(t('members.history.ended', { count: 1 })).click();
    await eventually(() => crops.count()).toBe(3);
    await lookAtAll(crops);
    await eventually(() => drawn(crops)).toBe(3);
    await eventually(() => page.getByText(t('members.history.superseded')).count()).toBe(1);
    await link(page, COVERING).waitFor();
    // From the HEIC file, by the phone's own offset.
    await page.goto(`${job.house}/members/${encodeURIComponent('い一')}`);
    await page.getByText('by 5 May 2020, 07:44; no photo is from before this stage').waitFor();
    await eventually(() => drawn(page.getByRole('img', { name: /^い一 on / }))).toBe(1);
  });

  it('keeps a note of the day', async () => {
    const { page, t } = job;
    await goTo(page, t, 'journal');
    await link(page.getByRole('list', { name: t('days.days') }), 'Sun, 24 Feb 2002').click();
    await heading(page, 'Sun, 24 Feb 2002').waitFor();
    await field(page, t('days.day.ownNote')).fill(NOTE);
    await button(page, t('days.day.saveNote')).click();
    await page.getByText(t('days.day.noteSaved')).waitFor();
    await eventually(() => drawn(page.getByRole('main').locator('img'))).toBe(1);
  });

  it('closes the covering only when told that three members are lost by it', async () => {
    const { page, t } = job;
    await goTo(page, t, 'coverings');
    await link(page, COVERING).click();
    await button(page, t('coverings.one.close')).click();
    const dialog = page.getByRole('dialog', { name: `Has ${COVERING} closed?` });
    await dialog.getByText('3 members would be lost, or parts of them:').waitFor();
    await button(dialog, t('coverings.close.submit')).click();
    await dialog.getByText(t('coverings.close.needAgree')).waitFor();
    await dialog.getByText(t('hold.close.needReason')).waitFor();
    await tick(dialog, t('coverings.close.agree'));
    await field(dialog, t('hold.close.reason')).fill('The plasterers start today.');
    await button(dialog, t('coverings.close.submit')).click();
    await dialog.waitFor({ state: 'detached' });
    await page.getByText(/^closed .*, said by Mio$/).waitFor();

    await goTo(page, t, 'report');
    await page.getByText('In all: 4 hidden, 1 on record, 0 without a record, 3 lost.').waitFor();
    expect(await line(page, t, 'い三')).toMatch(/on record\s+pegged, 24 Feb 2002, 13:43/);
    expect(await line(page, t, 'い二')).toMatch(/Lost\s+it was covered, and is tagged on no photo/);
    expect(await line(page, t, 'い通り貫一')).toContain(
      'it was covered; the last photo is from before the stage “pegged” (raised, 11 Jul 2001, 11:18)',
    );
    expect(await line(page, t, 'ろ二')).toContain('it was covered; the photo has no date (pegged)');
  });

  it('gives the report as CSV and on paper', async () => {
    const { page, t } = job;
    const [download] = await Promise.all([
      page.waitForEvent('download'),
      link(page, t('report.csv')).click(),
    ]);
    const text = await readFile(await download.path(), 'utf8');
    const rows: Record<string, string>[] = parse(text, { columns: true, bom: true });
    const told = rows.map((r) => [
      r['Mark'],
      r['Least stage'],
      r['State'],
      r['Nearest miss'],
      r['Photographed at'],
    ]);
    expect(Object.fromEntries(told.map(([mark, ...rest]) => [mark, rest]))).toEqual({
      い二: ['raised', 'lost', 'tagged on no photo', ''],
      い三: ['pegged', 'on record', '', '2002-02-24 13:43:45'],
      い通り貫一: [
        'pegged',
        'lost',
        'photographed, but before the stage that is needed',
        '2001-07-11 11:18:07',
      ],
      ろ二: ['pegged', 'lost', 'the photo has no date', ''],
    });
    await page.emulateMedia({ media: 'print' });
    await page.getByText(/^Boathouse, as of /).waitFor();
    expect(await button(page, t('report.print')).isVisible()).toBe(false);
    if (job.keepsPictures)
      await page.pdf({ path: await resultFile('report-closed.pdf'), preferCSSPageSize: true });
    await page.emulateMedia({ media: null });
  });
}

const linesOf = (page: Page, t: Words) =>
  page.getByRole('table', { name: t('report.table', { name: COVERING }) });
/** What is far from the window is not laid out, and says nothing until it is. */
async function line(page: Page, t: Words, mark: string): Promise<string> {
  const found = row(linesOf(page, t), mark);
  await found.scrollIntoViewIfNeeded();
  await eventually(() => found.innerText()).not.toBe('');
  return found.innerText();
}
