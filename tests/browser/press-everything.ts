import type { Page, Request } from 'playwright-core';

const BUTTONS = '.page button:not([disabled]), .page [role=button]:not([aria-disabled=true])';
const DIALOG = '[role=dialog], [role=alertdialog]';

/** What the server refuses to the role of whoever is at the page, and how many changes it was asked for and has not answered. */
export function hearRefusals(page: Page) {
  const refused: string[] = [];
  const waiting = new Set<Request>();
  page.on('request', (request) => void (request.method() !== 'GET' && waiting.add(request)));
  page.on('requestfinished', (request) => waiting.delete(request));
  page.on('requestfailed', (request) => waiting.delete(request));
  page.on('response', (response) => {
    if (response.status() === 403) refused.push(`${response.request().method()} ${response.url()}`);
  });
  return { refused, waiting };
}

/** Presses every button of the screen, and in what opens fills every field and sends it off. */
export async function pressEverything(page: Page): Promise<void> {
  for (let from: number | null = 0; from !== null;) {
    from = await page.evaluate(pressFrom, [BUTTONS, DIALOG, from] as const);
    if (from !== null) await answerDialog(page);
  }
  await page.evaluate(fillAndSend, '.page form');
}

async function answerDialog(page: Page): Promise<void> {
  await page.evaluate(fillAndSend, `:is(${DIALOG}) form`);
  if ((await page.locator(DIALOG).count()) > 0) await page.keyboard.press('Escape');
}

/** Presses one after the other until something asks, and resolves to where to go on. Stands alone, since it runs in the page. */
async function pressFrom([buttons, dialog, from]: readonly [string, string, number]): Promise<number | null> {
  // Printing would wait for a person.
  window.print = () => undefined;
  for (let n = from; ; n++) {
    const button = document.querySelectorAll(buttons)[n];
    if (!button) return null;
    button.dispatchEvent(new MouseEvent('click', { bubbles: true, cancelable: true }));
    await new Promise((resolve) => requestAnimationFrame(() => setTimeout(resolve, 0)));
    if (document.querySelector(dialog)) return n + 1;
  }
}

async function fillAndSend(selector: string): Promise<void> {
  for (const form of Array.from(document.querySelectorAll<HTMLFormElement>(selector))) {
    // Without a field and a button nobody can send it.
    if (!form.querySelector('input, textarea, select, [type=submit]')) continue;
    for (const field of Array.from(
      form.querySelectorAll<HTMLInputElement | HTMLTextAreaElement>('input, textarea'),
    )) {
      const { type } = field;
      if (!['text', 'textarea', 'date', 'datetime-local'].includes(type)) continue;
      const text =
        type === 'date' ? '2001-07-03' : type === 'datetime-local' ? '2001-07-03T10:00' : 'a reason';
      const prototype = Object.getPrototypeOf(field) as object;
      Object.getOwnPropertyDescriptor(prototype, 'value')?.set?.call(field, text);
      field.dispatchEvent(new Event('input', { bubbles: true }));
    }
    await new Promise((resolve) => requestAnimationFrame(() => setTimeout(resolve, 0)));
    form.requestSubmit();
  }
}
