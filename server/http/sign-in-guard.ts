import type { Request } from 'express';
import { AttemptLimit, networkOf } from './attempt-limit.ts';

const QUARTER_MS = 15 * 60 * 1000;
const HOUR_MS = 60 * 60 * 1000;

/**
 * Slows down guessing: of one account from one network, of many accounts from one network, and of one account from
 * many networks. Source: OWASP ASVS 4.0.3, 2.2.1 (no more than 100 failed attempts an hour on one account).
 */
export class SignInGuard {
  readonly #both: AttemptLimit;
  readonly #network: AttemptLimit;
  readonly #account: AttemptLimit;

  constructor(now: () => Date) {
    this.#both = new AttemptLimit(now, { attempts: 10, withinMs: QUARTER_MS });
    this.#network = new AttemptLimit(now, { attempts: 60, withinMs: QUARTER_MS });
    this.#account = new AttemptLimit(now, { attempts: 100, withinMs: HOUR_MS });
  }

  /** Throws 'too-many-attempts' without trying. */
  async attempt<T>(req: Request, email: string, signIn: () => Promise<T>): Promise<T> {
    const [network, account] = [networkOf(req.ip), email.toLowerCase()];
    const both = `${network} ${account}`;
    this.#both.begin(both);
    this.#network.begin(network);
    this.#account.begin(account);
    const signedIn = await signIn();
    this.#both.forget(both);
    this.#network.succeeded(network);
    this.#account.succeeded(account);
    return signedIn;
  }
}
