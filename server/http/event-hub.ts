import type { Request, Response } from 'express';
import { z } from 'zod';
import { BEAT_MS } from '#domain/contract/live';
import { HouseEvent, type HouseStateView } from '#domain/contract/house-events';

const Announcement = z.union([
  z.object({ house: z.string(), event: HouseEvent }),
  z.object({ ended: z.string().meta({ description: 'The person whose sessions have ended.' }) }),
]);

/** Hands on what the database announces to the browsers that look at a house. */
export class EventHub {
  readonly #listeners = new Map<string, Set<Response>>();
  /** Who listens. */
  readonly #people = new WeakMap<Response, string>();
  readonly #read: (house: string) => Promise<HouseStateView>;
  #beat: NodeJS.Timeout | undefined;

  constructor(read: (house: string) => Promise<HouseStateView>) {
    this.#read = read;
  }

  /** One announcement as it came from the database; what is not understood is left alone. */
  hear(payload: string): void {
    const parsed = Announcement.safeParse(safeJson(payload));
    if (!parsed.success) return;
    if ('ended' in parsed.data) return this.#end(parsed.data.ended);
    const { house, event } = parsed.data;
    this.#say(this.#listeners.get(house), event);
    // Whoever has lost the role finds the door shut on coming back; the others come back.
    if (event.type === 'statement' && event.kind === 'role.withdrawn')
      for (const res of this.#listeners.get(house) ?? []) res.end();
  }

  stream(house: string, person: string, req: Request, res: Response): void {
    res.writeHead(200, {
      'content-type': 'text/event-stream',
      'cache-control': 'no-cache, no-transform',
      'x-accel-buffering': 'no',
    });
    // Whoever asks by HEAD hears nothing, and waits for the end.
    if (req.method === 'HEAD') return void res.end();
    res.write('retry: 2000\n\n');
    const others = this.#listeners.get(house) ?? new Set();
    this.#listeners.set(house, others.add(res));
    this.#people.set(res, person);
    void this.#sayHere(house, new Set([res]));
    this.#beat ??= setInterval(() => this.#sayHereToAll(), BEAT_MS);
    req.on('close', () => {
      others.delete(res);
      if (others.size === 0 && this.#listeners.get(house) === others) this.#listeners.delete(house);
      if (this.#listeners.size === 0) this.#rest();
    });
  }

  close(): void {
    this.#rest();
    for (const listeners of this.#listeners.values()) for (const res of listeners) res.end();
    this.#listeners.clear();
  }

  /** Whoever may come back does; the others find the door shut. */
  #end(person: string): void {
    for (const listeners of this.#listeners.values())
      for (const res of listeners) if (this.#people.get(res) === person) res.end();
  }

  #rest(): void {
    clearInterval(this.#beat);
    this.#beat = undefined;
  }

  #sayHereToAll(): void {
    for (const [house, listeners] of this.#listeners) void this.#sayHere(house, listeners);
  }

  /** With how far the house is: what got lost between database and browser is noticed at the next beat. */
  async #sayHere(house: string, listeners: ReadonlySet<Response>): Promise<void> {
    try {
      this.#say(listeners, { type: 'here', ...(await this.#read(house)) });
    } catch {
      // A silent stream makes the clients ask, and be told what is wrong.
    }
  }

  #say(listeners: ReadonlySet<Response> | undefined, event: HouseEvent): void {
    for (const res of listeners ?? [])
      if (!res.writableEnded) res.write(`data: ${JSON.stringify(event)}\n\n`);
  }
}

function safeJson(text: string): unknown {
  try {
    return JSON.parse(text);
  } catch {
    return undefined;
  }
}
