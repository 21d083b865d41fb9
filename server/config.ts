import path from 'node:path';
import { z } from 'zod';
import { listeningOrigin } from './listening-origin.ts';

/** Where the tables live. */
export type DatabaseConfig =
  { readonly kind: 'embedded'; readonly folder: string } | { readonly kind: 'server'; readonly url: string };

/** Which half of the work this process does: answering people, making pictures, or both. */
export type ProcessRole = 'all' | 'web' | 'worker';

export interface Config {
  readonly host: string;
  readonly port: number;
  /** The address that people type; null: derived from host and port once listening. */
  readonly origin: string | null;
  /** Whose word is taken for whom they speak, beside proxies on this machine: addresses, networks, or `uniquelocal`. */
  readonly proxies: readonly string[];
  readonly dataFolder: string;
  readonly database: DatabaseConfig;
  readonly role: ProcessRole;
  readonly logLevel: string;
  /** The service that stamps tree heads (RFC 3161), with the file of roots that its certificates must lead to. */
  readonly timestamps: { readonly url: string; readonly caFile: string | null } | null;
  readonly owner: { readonly email: string; readonly password: string } | null;
}

const PROXIES =
  /^(?:uniquelocal|linklocal|[\da-f.:]+(?:\/\d{1,3})?)(?:,\s*(?:uniquelocal|linklocal|[\da-f.:]+(?:\/\d{1,3})?))*$/i;

const HIGHEST_PORT = 65_535;
const isPort = (text: string) => /^\d{1,5}$/.test(text) && Number(text) <= HIGHEST_PORT;
const Url = z.url({
  protocol: /^https?$/,
  error: 'must be an address that begins with https:// or http://',
});

const Environment = z.object({
  HOST: z.string().min(1).default('127.0.0.1'),
  PORT: z
    .string()
    .refine(isPort, `must be a whole number from 0 to ${HIGHEST_PORT}, in digits`)
    .transform(Number)
    .default(4310),
  ARAKABE_URL: Url.optional(),
  ARAKABE_PROXY: z
    .string()
    .regex(PROXIES, 'must be addresses or networks such as 10.0.0.0/8, or uniquelocal, with commas between')
    .optional(),
  ARAKABE_DATA: z.string().min(1).default('data'),
  DATABASE_URL: z
    .string()
    .regex(/^postgres(ql)?:\/\//, 'must begin with postgres://')
    .optional(),
  ARAKABE_ROLE: z.enum(['all', 'web', 'worker'], 'must be all, web or worker').default('all'),
  ARAKABE_LOG: z
    .enum(['silent', 'error', 'warn', 'info', 'debug'], 'must be silent, error, warn, info or debug')
    .default('info'),
  ARAKABE_TIMESTAMP_URL: Url.optional(),
  ARAKABE_TIMESTAMP_CA: z.string().min(1).optional(),
  ARAKABE_OWNER_EMAIL: z.email('must be an e-mail address').optional(),
  ARAKABE_OWNER_PASSWORD: z
    .string()
    .min(10, 'must have at least 10 characters')
    .max(200, 'must have at most 200 characters')
    .optional(),
});

/** Every contradiction in the environment at once, each a plain sentence. */
export class ConfigError extends Error {
  constructor(readonly sentences: readonly string[]) {
    super(sentences.join('\n'));
  }
}

/** Reads the environment; empty values count as absent. Throws ConfigError. */
export function readConfig(environment: NodeJS.ProcessEnv = process.env): Config {
  const present = Object.fromEntries(Object.entries(environment).filter(([, value]) => value !== ''));
  const parsed = Environment.safeParse(present);
  const sentences = parsed.success
    ? contradictions(parsed.data)
    : parsed.error.issues.map((issue) => `${issue.path.join('.')}: ${issue.message}`);
  if (!parsed.success || sentences.length > 0) throw new ConfigError(sentences);
  return toConfig(parsed.data);
}

/** What a command that serves nobody's record asks of the environment: a port where one is wished, and who watches. */
export function readTerminal(environment: NodeJS.ProcessEnv = process.env): {
  port: number | null;
  isWatched: boolean;
} {
  const { port } = readConfig({ PORT: environment['PORT'] });
  const isWished = Boolean(environment['PORT']);
  return {
    port: isWished && port > 0 ? port : null,
    isWatched: Boolean(process.stdout.isTTY) && !environment['CI'],
  };
}

function contradictions(env: z.infer<typeof Environment>): string[] {
  const found: string[] = [];
  if (Boolean(env.ARAKABE_OWNER_EMAIL) !== Boolean(env.ARAKABE_OWNER_PASSWORD))
    found.push('ARAKABE_OWNER_EMAIL and ARAKABE_OWNER_PASSWORD belong together: set both or neither.');
  if (env.ARAKABE_ROLE !== 'all' && !env.DATABASE_URL)
    found.push(
      `ARAKABE_ROLE=${env.ARAKABE_ROLE} needs DATABASE_URL: the embedded database serves one process.`,
    );
  if (env.ARAKABE_TIMESTAMP_CA && !env.ARAKABE_TIMESTAMP_URL)
    found.push('ARAKABE_TIMESTAMP_CA names whom to trust for stamps: set ARAKABE_TIMESTAMP_URL as well.');
  if (!env.ARAKABE_URL && !URL.canParse(listeningOrigin(env.HOST, env.PORT)))
    found.push(`HOST: “${env.HOST}” is no name or address of a machine, such as 127.0.0.1 or ::1.`);
  return found;
}

function toConfig(env: z.infer<typeof Environment>): Config {
  const dataFolder = path.resolve(env.ARAKABE_DATA);
  return {
    host: env.HOST,
    port: env.PORT,
    origin: env.ARAKABE_URL ? new URL(env.ARAKABE_URL).origin : null,
    proxies: env.ARAKABE_PROXY?.split(',').map((one) => one.trim()) ?? [],
    dataFolder,
    database: env.DATABASE_URL
      ? { kind: 'server', url: env.DATABASE_URL }
      : { kind: 'embedded', folder: path.join(dataFolder, 'database') },
    role: env.ARAKABE_ROLE,
    logLevel: env.ARAKABE_LOG,
    timestamps: env.ARAKABE_TIMESTAMP_URL
      ? {
          url: env.ARAKABE_TIMESTAMP_URL,
          caFile: env.ARAKABE_TIMESTAMP_CA ? path.resolve(env.ARAKABE_TIMESTAMP_CA) : null,
        }
      : null,
    owner:
      env.ARAKABE_OWNER_EMAIL && env.ARAKABE_OWNER_PASSWORD
        ? { email: env.ARAKABE_OWNER_EMAIL, password: env.ARAKABE_OWNER_PASSWORD }
        : null,
  };
}
