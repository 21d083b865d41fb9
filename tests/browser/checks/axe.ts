import axe, { type AxeResults, type RunOptions } from 'axe-core';
import type { Page } from 'playwright-core';

/** WCAG 2.2 up to AA, and axe's own good practice. */
const ALL: RunOptions = {
  runOnly: ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa', 'best-practice'],
  resultTypes: ['violations'],
};
/** Of the page as a whole: they say nothing where all but an open dialog is hidden from readers. */
const OF_THE_PAGE = ['landmark-one-main', 'page-has-heading-one', 'region'];
/** What another colour scheme can change. */
const COLOURS: RunOptions = {
  runOnly: { type: 'rule', values: ['color-contrast', 'link-in-text-block'] },
  resultTypes: ['violations'],
};

declare global {
  interface Window {
    axe?: { run(options: unknown): Promise<AxeResults> };
  }
}

/** Each violation with the place where it stands; empty is well. */
export async function violations(page: Page, scheme: 'light' | 'dark'): Promise<string[]> {
  if (!(await page.evaluate(() => Boolean(window.axe)))) await page.evaluate(axe.source);
  const isAsking = (await page.locator('[role=dialog], [role=alertdialog]').count()) > 0;
  const found = await page.evaluate(
    (options) => window.axe?.run(options).then((results) => results.violations),
    scheme === 'light' ? ALL : COLOURS,
  );
  if (!found) throw new Error('axe did not load.');
  const fit = found.filter(({ id }) => !(isAsking && OF_THE_PAGE.includes(id)));
  return fit.flatMap(({ id, nodes }) =>
    nodes.map(({ target, failureSummary }) => {
      const why = failureSummary?.split('\n').slice(1).join(' ').trim() ?? '';
      return `${scheme}: ${id} at ${target.join(' ')}: ${why}`;
    }),
  );
}
