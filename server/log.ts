import pino, { type DestinationStream, type Logger } from 'pino';

/** What may hold a secret, whatever it is logged with; pino's paths, at the top and one level down. */
const SECRETS = ['password', 'secret', 'token', 'link', 'cookie', 'authorization', 'set-cookie'];
/** What libraries hang on their errors: the request's body, the values of a query. */
const OF_ERRORS = ['err.body', 'err.node', 'err.parameters', 'err.detail', 'err.config', 'err.headers'];
const quoted = (name: string) => (name.includes('-') ? `["${name}"]` : name);

/** One line of JSON an entry, in which control characters are escaped; secrets are blacked out by name. */
export function createLog(level: string, to?: DestinationStream): Logger {
  const below = SECRETS.map((name) => (name.includes('-') ? `*${quoted(name)}` : `*.${name}`));
  const redact = { paths: [...SECRETS.map(quoted), ...below, ...OF_ERRORS], censor: '[not logged]' };
  return to ? pino({ level, redact }, to) : pino({ level, redact });
}
