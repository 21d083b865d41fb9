import type { Context } from './context.ts';
import { Failure } from './failure.ts';

/** How far a client's clock may run ahead of the server's before 'now' counts as the future. */
export const CLOCK_SLACK_MS = 5 * 60 * 1000;

/** When a photo was taken cannot lie in the future of the server. */
export function assertPast(context: Context, time: string): void {
  if (Date.parse(time) > context.now().getTime() + CLOCK_SLACK_MS)
    throw new Failure('time-in-the-future', { time });
}
