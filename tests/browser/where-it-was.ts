import { afterEach } from 'vitest';
import type { Page } from 'playwright-core';
import { openPages } from './app.ts';

/** A failure says what stood in each browser, for whoever can only read about it afterwards. */
afterEach(async ({ task }) => {
  const [error] = task.result?.errors ?? [];
  if (!error) return;
  const told = await Promise.all([...openPages].map(tellPage));
  error.message = [error.message, ...told].join('\n');
});

async function tellPage(page: Page): Promise<string> {
  const seen = await page
    .evaluate(() => {
      const texts = Array.from(
        document.querySelectorAll('h1, [role="dialog"] h2, [role="alertdialog"] h2, .notice'),
      );
      const focused = document.activeElement;
      return {
        texts: texts.map(({ textContent }) => textContent),
        focused: focused?.textContent.slice(0, 80),
      };
    })
    .catch(() => null);
  return `In the browser at ${page.url()} stood ${JSON.stringify(seen)}`;
}
