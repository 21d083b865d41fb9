import { compose, type Core } from './compose.ts';
import { ConfigError, readConfig, type Config } from './config.ts';
import { sayWhyNot } from './why-not.ts';

/** Where a path is to be opened, as words. */
type Address = (path: string) => string;

/** Something that whoever runs the program does beside `npm start`, over the same configuration, and then it is done. */
export function runCommand(work: (core: Core, at: Address) => Promise<void>): void {
  run(work).catch((error: unknown) => {
    const sentences = error instanceof ConfigError ? error.sentences : [sayWhyNot(error)];
    for (const sentence of sentences) refuse(sentence);
  });
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

/** Which port a server took, or takes later, is not for another process to know. */
const addressIn =
  ({ origin }: Config): Address =>
  (path) =>
    origin === null ? `${path}, under the address that the server names when it starts` : `${origin}${path}`;
