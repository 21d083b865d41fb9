import { Failure } from '../services/failure.ts';

const WINDOW_MS = 15 * 60 * 1000;
const FREE_FAILURES = 10;

/** Slows down guessing: after ten failures for one address and e-mail within 15 minutes it is refused. In memory, per process. */
export class SignInGuard {
  readonly #failures = new Map<string, number[]>();

  constructor(private readonly now: () => Date) {}

  assertMayTry(ip: string, email: string): void {
    const recent = this.#recent(key(ip, email));
    const [oldest] = recent;
    if (recent.length < FREE_FAILURES || oldest === undefined) return;
    const seconds = Math.ceil((oldest + WINDOW_MS - this.now().getTime()) / 1000);
    throw new Failure('too-many-attempts', { seconds });
  }

  failed(ip: string, email: string): void {
    const name = key(ip, email);
    this.#failures.set(name, [...this.#recent(name), this.now().getTime()]);
    if (this.#failures.size > 10_000) this.#forgetOld();
  }

  succeeded(ip: string, email: string): void {
    this.#failures.delete(key(ip, email));
  }

  #recent(name: string): number[] {
    const since = this.now().getTime() - WINDOW_MS;
    return (this.#failures.get(name) ?? []).filter((time) => time > since);
  }

  #forgetOld(): void {
    for (const name of this.#failures.keys())
      if (this.#recent(name).length === 0) this.#failures.delete(name);
  }
}

const key = (ip: string, email: string) => `${ip} ${email.toLowerCase()}`;
