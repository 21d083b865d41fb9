import { expect, it } from 'vitest';
import { backToPhotos, openOnBench, tagArrived } from '../bench-hands.ts';
import { button, drawn, eventually, field, goTo, heading, signIn } from '../hands.ts';
import { EMAIL, NOTE, nameOf, type Job } from './job.ts';

/** What is still there later. */
export function returning(job: Job): void {
  it('has everything still there after signing out and in again', async () => {
    const { app, page, t } = job;
    await button(page, t('common.signOut')).click();
    await heading(page, t('account.signIn.title')).waitFor();
    await page.goto(`${job.house}/report`);
    await signIn(page, t, EMAIL);
    // Back to where the person wanted to go.
    await page.getByText('In all: 4 hidden, 1 on record, 0 without a record, 3 lost.').waitFor();
    await page.goto(`${job.house}/days/2002-02-24`);
    await eventually(() => field(page, t('days.day.ownNote')).inputValue()).toBe(NOTE);
    await goTo(page, t, 'photos');
    await eventually(() => drawn(page.getByRole('main').locator('img'))).toBe(4);
    await openOnBench(page, t, nameOf(job, 'cranes'));
    await tagArrived(page, t, 'い通り貫一', 'raised');
    await backToPhotos(page, t);
    // What the screen was asking for in the moment of signing out is answered with 401, and written down.
    expect(app.complaints(/ 401 /)).toEqual([]);
  });
}
