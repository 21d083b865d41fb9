import type { AccountView, InvitedView, LinkView, TokenView } from '#domain/contract/views';
import type { Person, Role } from '#domain/contract/shapes';

/** Who people are. Accounts are never in a house's ledger, which names people by id and name only. */
export interface Accounts {
  /** The account behind a session cookie or an access token, if any. */
  identify(headers: Headers): Promise<{ account: AccountView; by: 'session' | 'token' } | null>;
  /** Throws Failure('wrong-credentials') without saying which half was wrong. */
  signIn(email: string, password: string, headers: Headers): Promise<SignedIn>;
  /** The cookies that end the session. */
  signOut(headers: Headers): Promise<string[]>;
  /** Throws Failure('email-in-use'). */
  create(person: NewPerson & { keeper: boolean }): Promise<AccountView>;
  /** Spends a one-time link and makes the account, both or neither. Throws 'link-used-or-expired', 'email-in-use'. */
  createByLink(secret: string, person: NewPerson): Promise<{ account: AccountView; link: ReadLink }>;
  findByEmail(email: string): Promise<AccountView | undefined>;
  anyExists(): Promise<boolean>;
  /** Whoever keeps the instance; undefined while there is nobody. */
  keeper(): Promise<AccountView | undefined>;

  makeLink(link: LinkRequest): Promise<string>;
  /** Throws Failure('link-used-or-expired'). */
  readLink(secret: string): Promise<ReadLink>;
  /** Those whose link for the house can still be used. */
  invited(house: string): Promise<InvitedView[]>;

  tokens(person: string): Promise<TokenView[]>;
  createToken(person: string, token: NewToken): Promise<{ token: TokenView; secret: string }>;
  endToken(person: string, token: string): Promise<boolean>;
}

export interface NewPerson {
  readonly name: string;
  readonly email: string;
  readonly password: string;
}

export type ReadLink = LinkView & { readonly houseId: string | null; readonly madeBy: Person | null };

export interface SignedIn {
  readonly account: AccountView;
  readonly cookies: string[];
}

export interface LinkRequest {
  readonly purpose: 'first-account' | 'join-house';
  readonly email: string | null;
  readonly houseId: string | null;
  readonly role: Role | null;
  /** In whose name the role is given; null for the first account, which the machine offers. */
  readonly madeBy: Person | null;
}

export interface NewToken {
  readonly id: string;
  readonly name: string;
  readonly expiresAt: string | null;
}
