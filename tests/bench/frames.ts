import type { Page } from 'playwright-core';

/** How evenly a page was drawn: frames in a second, and the share of frames within a fiftieth of a second. */
export interface Frames {
  readonly perSecond: number;
  readonly inTime: number;
}

const FIFTIETH_MS = 20;

/** Counts the page's frames (requestAnimationFrame, HTML Living Standard) while `act` lasts. */
export async function framesWhile(page: Page, act: () => Promise<void>): Promise<Frames> {
  await page.evaluate(() => {
    const times: number[] = [];
    Object.assign(window, { frameTimes: times });
    const next = (time: number) => {
      times.push(time);
      requestAnimationFrame(next);
    };
    requestAnimationFrame(next);
  });
  await act();
  const times = await page.evaluate(() => (window as unknown as { frameTimes: number[] }).frameTimes);
  const gaps = times.slice(1).map((time, i) => time - (times[i] ?? 0));
  const whole = (times.at(-1) ?? 0) - (times[0] ?? 0);
  return {
    perSecond: (1000 * gaps.length) / whole,
    inTime: gaps.filter((gap) => gap <= FIFTIETH_MS).length / gaps.length,
  };
}
