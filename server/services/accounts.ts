import type { AccountView, InvitedView, LinkView, SessionView, TokenView } from '#domain/contract/views';
import type { Person, Role } from '#domain/contract/shapes';

/** Who people are. Accounts are never in a house's ledger, which names people by id and name only. */
export interface Accounts {
  /** The account behind a session cookie or an access token, if any. */
  identify(headers: Headers): Promise<{ account: AccountView; by: 'session' | 'token' } | null>;
  /** Throws Failure('wrong-credentials') without saying which half was wrong. */
  signIn(email: string, password: string, headers: Headers): Promise<SignedIn>;
  /** The cookies that end the session. Whatever streams the person still has open are ended, too. */
  signOut(headers: Headers): Promise<string[]>;
  sessions(person: string, headers: Headers): Promise<SessionView[]>;
  /** Every session and calendar address of the person, and the access tokens where that is asked. */
  endSessions(person: string, also: { tokens: boolean }): Promise<void>;
  /** Ends all sessions and calendar addresses. Throws Failure('present-password-wrong'). */
  changePassword(person: string, change: PasswordChange): Promise<void>;
  /** Spends a one-time link, sets the password and ends all sessions, calendar addresses and tokens. Throws 'link-used-or-expired'. */
  renewPassword(secret: string, password: string): Promise<void>;
  /** Throws Failure('email-in-use'). */
  create(person: NewPerson & { keeper: boolean }): Promise<AccountView>;
  /** Spends a one-time link and makes the account, both or neither. Throws 'link-used-or-expired', 'email-in-use'. */
  createByLink(secret: string, person: NewPerson): Promise<{ account: AccountView; link: ReadLink }>;
  find(person: string): Promise<AccountView | undefined>;
  findByEmail(email: string): Promise<AccountView | undefined>;
  anyExists(): Promise<boolean>;
  /** Whoever keeps the instance; undefined while there is nobody. */
  keeper(): Promise<AccountView | undefined>;

  makeLink(link: LinkRequest): Promise<string>;
  /** Throws Failure('link-used-or-expired'). */
  readLink(secret: string): Promise<ReadLink>;
  /** Links into the house that can still be used. */
  invited(house: string): Promise<InvitedView[]>;
  /** Of the house; one that is used, or over, stays as it is. */
  endInvitation(house: string, invitation: string): Promise<void>;

  /** What a guest's link is opened by; a guest may have several, and all end with the guest. */
  makeGuestSecret(guest: string): Promise<string>;
  /** The id of the guest whose secret this is, whether or not the link still holds. */
  guestOf(secret: string): Promise<string | undefined>;
  /** That the guest was there now. */
  noteGuest(secret: string): Promise<void>;
  /** When each of these guests was last there, null for never; nothing of those for whom there is no secret here. */
  guestUses(guests: readonly string[]): Promise<ReadonlyMap<string, string | null>>;

  tokens(person: string): Promise<TokenView[]>;
  createToken(person: string, token: NewToken): Promise<{ token: TokenView; secret: string }>;
  endToken(person: string, token: string): Promise<boolean>;
}

export interface NewPerson {
  readonly name: string;
  readonly email: string;
  readonly password: string;
}

export interface PasswordChange {
  readonly present: string;
  readonly password: string;
  readonly tokens: boolean;
}

export type ReadLink = Omit<LinkView, 'by'> & {
  readonly houseId: string | null;
  readonly madeBy: Person | null;
  /** Whose password the link renews. */
  readonly personId: string | null;
};

export interface SignedIn {
  readonly account: AccountView;
  readonly cookies: string[];
}

export interface LinkRequest {
  readonly purpose: LinkView['purpose'];
  readonly email: string | null;
  readonly houseId: string | null;
  readonly role: Role | null;
  /** Whose password the link renews; null for other purposes. */
  readonly personId: string | null;
  /** In whose name; null for what the machine or whoever runs it offers. */
  readonly madeBy: Person | null;
  readonly until: Date;
}

export interface NewToken {
  readonly id: string;
  readonly name: string;
  readonly expiresAt: string | null;
}
