import { randomUUID } from 'node:crypto';
import { betterAuth } from 'better-auth';
import { Kysely, PostgresDialect } from 'kysely';
import type pg from 'pg';

/** Passwords and sessions by better-auth, over this database's tables; accounts are made by links only. */
export function signInLibrary(pool: pg.Pool, settings: { secret: string; origin: string; secure: boolean }) {
  const db = new Kysely<unknown>({ dialect: new PostgresDialect({ pool }) });
  return betterAuth({
    appName: 'Arakabe',
    baseURL: settings.origin,
    basePath: '/api/v1/session',
    secret: settings.secret,
    trustedOrigins: [settings.origin],
    database: { db, type: 'postgres' },
    telemetry: { enabled: false },
    logger: { disabled: true },
    rateLimit: { enabled: false },
    emailAndPassword: { enabled: true, disableSignUp: true, minPasswordLength: 10, maxPasswordLength: 200 },
    session: {
      expiresIn: 60 * 60 * 24 * 30,
      updateAge: 60 * 60 * 24,
      modelName: 'person_session',
      fields: SESSION,
    },
    user: { modelName: 'person', fields: USER },
    account: { modelName: 'person_credential', fields: CREDENTIAL },
    verification: { modelName: 'person_verification', fields: VERIFICATION },
    advanced: {
      // With this prefix browsers take a cookie only over TLS, for this host alone (RFC 6265bis §4.1.3.2).
      cookiePrefix: settings.secure ? '__Host-arakabe' : 'arakabe',
      // Would put another prefix in front.
      useSecureCookies: false,
      disableCSRFCheck: true,
      disableOriginCheck: true,
      defaultCookieAttributes: { sameSite: 'lax', httpOnly: true, path: '/', secure: settings.secure },
      database: { generateId: () => randomUUID() },
    },
  });
}

const TIMES = { createdAt: 'created_at', updatedAt: 'updated_at' };
const USER = { emailVerified: 'email_verified', ...TIMES };
const SESSION = {
  userId: 'user_id',
  expiresAt: 'expires_at',
  ipAddress: 'ip_address',
  userAgent: 'user_agent',
  ...TIMES,
};
const CREDENTIAL = {
  accountId: 'account_id',
  providerId: 'provider_id',
  userId: 'user_id',
  accessToken: 'access_token',
  refreshToken: 'refresh_token',
  idToken: 'id_token',
  accessTokenExpiresAt: 'access_token_expires_at',
  refreshTokenExpiresAt: 'refresh_token_expires_at',
  ...TIMES,
};
const VERIFICATION = { expiresAt: 'expires_at', ...TIMES };

export type SignInLibrary = ReturnType<typeof signInLibrary>;
