import { createHash } from 'node:crypto';
import type { ProblemCode } from '#domain/contract/problems';
import { Failure } from '../services/failure.ts';

const WINDOW_MS = 15 * 60 * 1000;
const FREE_FAILURES = 10;

interface Guess {
  readonly at: number;
  /** Of what was tried; null where the same try counts again. */
  readonly hash: string | null;
}

/**
 * Slows down guessing: after ten wrong guesses from one side within 15 minutes it is refused whatever it tries.
 * In memory, per process.
 */
export class GuessGuard {
  readonly #guesses = new Map<string, readonly Guess[]>();

  constructor(private readonly now: () => Date) {}

  /** A password: each failure counts, and success clears. `from`: where the guess comes from. */
  async password<T>(from: string, wrong: ProblemCode, work: () => Promise<T>): Promise<T> {
    const answer = await this.#watch(from, null, wrong, work);
    this.#guesses.delete(from);
    return answer;
  }

  /** The secret of an address: whoever opens a dead link again and again guesses nothing. */
  secret<T>(from: string, secret: string, wrong: ProblemCode, work: () => Promise<T>): Promise<T> {
    return this.#watch(from, createHash('sha256').update(secret).digest('base64url'), wrong, work);
  }

  async #watch<T>(from: string, hash: string | null, wrong: ProblemCode, work: () => Promise<T>): Promise<T> {
    this.#assertMayTry(from);
    try {
      return await work();
    } catch (error) {
      if (error instanceof Failure && error.code === wrong) this.#failed(from, hash);
      throw error;
    }
  }

  #assertMayTry(from: string): void {
    const recent = this.#recent(from);
    const [oldest] = recent;
    if (recent.length < FREE_FAILURES || oldest === undefined) return;
    const seconds = Math.ceil((oldest.at + WINDOW_MS - this.now().getTime()) / 1000);
    throw new Failure('too-many-attempts', { seconds });
  }

  #failed(from: string, hash: string | null): void {
    const recent = this.#recent(from);
    if (hash !== null && recent.some((guess) => guess.hash === hash)) return;
    this.#guesses.set(from, [...recent, { at: this.now().getTime(), hash }]);
    if (this.#guesses.size > 10_000) this.#forgetOld();
  }

  #recent(from: string): readonly Guess[] {
    const since = this.now().getTime() - WINDOW_MS;
    return (this.#guesses.get(from) ?? []).filter(({ at }) => at > since);
  }

  #forgetOld(): void {
    for (const from of this.#guesses.keys()) if (this.#recent(from).length === 0) this.#guesses.delete(from);
  }
}
