import type { Request, Response } from 'express';
import { z } from 'zod';
import { HouseEvent } from '#domain/contract/views';

const HEARTBEAT_MS = 20_000;
const Announcement = z.object({ house: z.string(), event: HouseEvent });

/** Hands on what the database announces to the browsers that look at a house. */
export class EventHub {
  readonly #listeners = new Map<string, Set<Response>>();

  /** One announcement as it came from the database; what is not understood is left alone. */
  hear(payload: string): void {
    const parsed = Announcement.safeParse(safeJson(payload));
    if (!parsed.success) return;
    const { house, event } = parsed.data;
    for (const res of this.#listeners.get(house) ?? []) res.write(`data: ${JSON.stringify(event)}\n\n`);
  }

  stream(house: string, req: Request, res: Response): void {
    res.writeHead(200, {
      'content-type': 'text/event-stream',
      'cache-control': 'no-cache, no-transform',
      'x-accel-buffering': 'no',
    });
    res.write('retry: 2000\n\n');
    const heartbeat = setInterval(() => res.write(': still here\n\n'), HEARTBEAT_MS);
    const others = this.#listeners.get(house) ?? new Set();
    this.#listeners.set(house, others.add(res));
    req.on('close', () => {
      clearInterval(heartbeat);
      others.delete(res);
      if (others.size === 0) this.#listeners.delete(house);
    });
  }

  close(): void {
    for (const listeners of this.#listeners.values()) for (const res of listeners) res.end();
    this.#listeners.clear();
  }
}

function safeJson(text: string): unknown {
  try {
    return JSON.parse(text);
  } catch {
    return undefined;
  }
}
