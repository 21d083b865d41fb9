import type { Page } from 'playwright-core';

const BUTTONS = '.page button:not([disabled]), .page [role=button]:not([aria-disabled=true])';
const DIALOG = '[role=dialog], [role=alertdialog]';

/** Presses every button of the screen, and in what opens fills every field and sends it off. */
export async function pressEverything(page: Page): Promise<void> {
  const count = await page.locator(BUTTONS).count();
  for (let i = 0; i < count; i++) {
    const isPressed = await page.evaluate(pressNth, [BUTTONS, i] as const);
    if (!isPressed) continue;
    if ((await page.locator(DIALOG).count()) > 0) await answerDialog(page);
  }
  await page.evaluate(fillAndSend, '.page form');
  await page.waitForLoadState('networkidle');
}

async function answerDialog(page: Page): Promise<void> {
  await page.evaluate(fillAndSend, `:is(${DIALOG}) form`);
  await page.waitForLoadState('networkidle');
  if ((await page.locator(DIALOG).count()) > 0) await page.keyboard.press('Escape');
}

/** What runs in the page stands alone there. Printing would wait for a person. */
async function pressNth([selector, n]: readonly [string, number]): Promise<boolean> {
  window.print = () => undefined;
  const button = document.querySelectorAll<HTMLElement | SVGElement>(selector)[n];
  if (!button || document.querySelector('[role=dialog], [role=alertdialog]')) return false;
  button.dispatchEvent(new MouseEvent('click', { bubbles: true, cancelable: true }));
  await new Promise((resolve) => requestAnimationFrame(() => setTimeout(resolve, 0)));
  return true;
}

async function fillAndSend(selector: string): Promise<void> {
  for (const form of Array.from(document.querySelectorAll<HTMLFormElement>(selector))) {
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
