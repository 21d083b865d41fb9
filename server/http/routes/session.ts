import type { Context } from '../../services/context.ts';
import { Failure } from '../../services/failure.ts';
import { enterByLink } from '../../services/people.ts';
import { headersOf, identified } from '../authentication.ts';
import type { Handlers } from '../implement.ts';
import type { SignInGuard } from '../sign-in-guard.ts';

export function sessionHandlers(context: Context, guard: SignInGuard): Handlers {
  const { accounts } = context;
  return {
    readSession: async ({ req }) => ({ account: await identified(context, req) }),

    signIn: async ({ req, res, body: { email, password } }) => {
      guard.assertMayTry(req.ip ?? '', email);
      try {
        const { account, cookies } = await accounts.signIn(email, password, headersOf(req));
        guard.succeeded(req.ip ?? '', email);
        res.append('set-cookie', cookies);
        return { account };
      } catch (error) {
        guard.failed(req.ip ?? '', email);
        throw error;
      }
    },

    signOut: async ({ req, res }) => {
      res.append('set-cookie', await accounts.signOut(headersOf(req)));
      return undefined;
    },

    readLink: async ({ params }) => {
      const { houseId: _, madeBy: __, ...link } = await accounts.readLink(params.link);
      return link;
    },

    useLink: async ({ req, res, params, body }) => {
      const { house } = await enterByLink(context, params.link, body);
      const { account, cookies } = await accounts.signIn(body.email, body.password, headersOf(req));
      res.append('set-cookie', cookies);
      return { account, house };
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
