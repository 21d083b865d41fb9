import { compose, type Core } from './compose.ts';
import { readConfig, type Config } from './config.ts';
import { listeningOrigin } from './listening-origin.ts';
import { sayWhyNot } from './why-not.ts';

/** Where a path is to be opened: an address, or the path with what to put before it. */
type Address = (path: string) => string;

/** Something that whoever runs the program does beside `npm start`, over the same configuration, and then it is done. */
export function runCommand(work: (core: Core, at: Address) => Promise<void>): void {
  run(work).catch((error: unknown) => refuse(sayWhyNot(error)));
}

export function refuse(sentence: string): void {
  process.stderr.write(`${sentence}\n`);
  process.exitCode = 1;
}

async function run(work: (core: Core, at: Address) => Promise<void>): Promise<void> {
  const config: Config = { ...readConfig(), role: 'web', logLevel: 'warn' };
  const core = await compose(config);
  try {
    await work(core, addressIn(config));
  } finally {
    await core.close();
  }
}

const addressIn =
  ({ origin, host, port }: Config): Address =>
  (path) =>
    origin === null ? `${path}\n${whatBefore(host, port)}` : `${origin}${path}`;

/** Where a server listens, or will, another process can only suppose: it may have been started with other settings. */
function whatBefore(host: string, port: number): string {
  const isTyped = port !== 0 && !EVERYWHERE.includes(host);
  const supposed = isTyped ? ` (with these settings ${listeningOrigin(host, port)})` : '';
  return (
    `Put before it the address that npm start prints${supposed}, or the one by which others reach the server. ` +
    'With ARAKABE_URL set it is printed whole.'
  );
}

/** To listen on all addresses of a machine; nobody types these. */
const EVERYWHERE: readonly string[] = ['0.0.0.0', '::'];
