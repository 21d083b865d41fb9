import type { Request, Response } from 'express';
import type { AccountView } from '#domain/contract/views';
import type { Context } from '../../services/context.ts';
import { Failure } from '../../services/failure.ts';
import { renewPassword } from '../../services/passwords.ts';
import { enterByLink, readLink } from '../../services/people.ts';
import { headersOf, identified } from '../authentication.ts';
import type { GuessGuard } from '../guess-guard.ts';
import type { Handlers } from '../implement.ts';
import type { SignInGuard } from '../sign-in-guard.ts';

export function sessionHandlers(context: Context, guard: GuessGuard, signIns: SignInGuard): Handlers {
  const { accounts } = context;
  const signIn = async (req: Request, res: Response, email: string, password: string) => {
    const { account, cookies } = await accounts.signIn(email, password, headersOf(req));
    res.append('set-cookie', cookies);
    return { account };
  };
  const byLink = <T>(req: Request, link: string, work: () => Promise<T>) =>
    guard.secret(`links ${req.ip}`, link, 'link-used-or-expired', work);
  return {
    readSession: async ({ req }) => ({ account: await identified(context, req) }),

    signIn: ({ req, res, body: { email, password } }) =>
      signIns.attempt(req, email, () =>
        guard.password(passwordOf(req, { email }), 'wrong-credentials', () =>
          signIn(req, res, email, password),
        ),
      ),

    signOut: async ({ req, res }) => {
      res.append('set-cookie', await accounts.signOut(headersOf(req)));
      return undefined;
    },

    changePassword: async ({ req, res, account, body }) => {
      await guard.password(passwordOf(req, account), 'present-password-wrong', () =>
        accounts.changePassword(account.id, body),
      );
      return signIn(req, res, account.email, body.password);
    },
    listSessions: async ({ req, account }) => ({
      sessions: await accounts.sessions(account.id, headersOf(req)),
    }),
    endSessions: async ({ req, res, account, query }) => {
      res.append('set-cookie', await accounts.signOut(headersOf(req)));
      await accounts.endSessions(account.id, { tokens: query.tokens === '1' });
      return undefined;
    },

    readLink: ({ req, params: { link } }) => byLink(req, link, () => readLink(context, link)),
    useLink: async ({ req, res, params: { link }, body }) => {
      const { house } = await byLink(req, link, () => enterByLink(context, link, body));
      return { ...(await signIn(req, res, body.email, body.password)), house };
    },
    renewPassword: async ({ req, res, params: { link }, body: { password } }) => {
      const { email } = await byLink(req, link, () => renewPassword(context, link, password));
      return signIn(req, res, email, password);
    },

    listTokens: async ({ account }) => ({ tokens: await accounts.tokens(account.id) }),
    createToken: ({ account, body }) => accounts.createToken(account.id, body),
    deleteToken: async ({ account, params }) => {
      if (!(await accounts.endToken(account.id, params.token)))
        throw new Failure('not-found', { what: 'token' });
      return undefined;
    },
  };
}

/** One account's password from one address, wherever it is asked for. */
function passwordOf(req: Request, { email }: Pick<AccountView, 'email'>): string {
  return `password ${req.ip} ${email.toLowerCase()}`;
}
