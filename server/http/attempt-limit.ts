import { isIPv6 } from 'node:net';
import { Failure } from '../services/failure.ts';

/** Beyond so many names the oldest are forgotten: whoever has that many addresses is not held up by a list. */
const NAMES = 20_000;

/**
 * So many attempts in a stretch of time for one name. An attempt counts from its beginning, so that many at once get
 * no farther than one after the other, and no more once it has succeeded. In memory, per process.
 */
export class AttemptLimit {
  readonly #attempts = new Map<string, number[]>();

  constructor(
    private readonly now: () => Date,
    private readonly allowed: { readonly attempts: number; readonly withinMs: number },
  ) {}

  /** Throws 'too-many-attempts' with the seconds to wait. */
  begin(name: string): void {
    const now = this.now().getTime();
    const recent = this.#recent(name, now);
    const [oldest] = recent;
    if (recent.length >= this.allowed.attempts && oldest !== undefined) {
      const seconds = Math.ceil((oldest + this.allowed.withinMs - now) / 1000);
      throw new Failure('too-many-attempts', { seconds });
    }
    // The name that was used last stands last.
    this.#attempts.delete(name);
    this.#attempts.set(name, [...recent, now]);
    if (this.#attempts.size > NAMES) this.#forget(now);
  }

  /** Takes the last attempt back. */
  succeeded(name: string): void {
    const attempts = this.#attempts.get(name) ?? [];
    if (attempts.length <= 1) this.#attempts.delete(name);
    else this.#attempts.set(name, attempts.slice(0, -1));
  }

  /** As if there had been none. */
  forget(name: string): void {
    this.#attempts.delete(name);
  }

  /** How many names it remembers. */
  get size(): number {
    return this.#attempts.size;
  }

  #recent(name: string, now: number): number[] {
    return (this.#attempts.get(name) ?? []).filter((time) => time > now - this.allowed.withinMs);
  }

  #forget(now: number): void {
    for (const name of this.#attempts.keys())
      if (this.#attempts.size > NAMES / 2 || this.#recent(name, now).length === 0)
        this.#attempts.delete(name);
  }
}

/** Where a request comes from; of IPv6 the network, in which one machine has as many addresses as it likes. */
export function networkOf(ip: string | undefined): string {
  if (ip === undefined) return '';
  const plain = ip.replace(/^::ffff:(?=\d+\.)/i, '');
  if (!isIPv6(plain)) return plain;
  const [head = '', tail] = plain.split('%')[0]?.split('::') ?? [];
  const left = head.split(':').filter(Boolean);
  const right = (tail ?? '').split(':').filter(Boolean);
  const zeros = tail === undefined ? 0 : 8 - left.length - right.length;
  return [...left, ...Array<string>(zeros).fill('0'), ...right].slice(0, 4).join(':');
}
