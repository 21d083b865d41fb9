import type { IncomingMessage } from 'node:http';

/** Ends the connection of a request that has not arrived whole in time, however steadily it drips. */
export function hurry(req: IncomingMessage, limitMs: number): void {
  if (req.complete) return;
  const timer = setTimeout(() => req.destroy(), limitMs);
  timer.unref();
  const stop = () => clearTimeout(timer);
  req.once('end', stop).once('close', stop);
}
