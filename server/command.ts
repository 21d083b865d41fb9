import { compose, type Core } from './compose.ts';
import { ConfigError, readConfig, type Config } from './config.ts';
import { sayWhyNot } from './why-not.ts';

/** Something that whoever runs the program does beside `npm start`, over the same configuration, and then it is done. */
export function runCommand(work: (core: Core, origin: string) => Promise<void>): void {
  run(work).catch((error: unknown) => {
    const sentences = error instanceof ConfigError ? error.sentences : [sayWhyNot(error)];
    for (const sentence of sentences) refuse(sentence);
  });
}

export function refuse(sentence: string): void {
  process.stderr.write(`${sentence}\n`);
  process.exitCode = 1;
}

async function run(work: (core: Core, origin: string) => Promise<void>): Promise<void> {
  const config: Config = { ...readConfig(), role: 'web', logLevel: 'warn' };
  const core = await compose(config);
  try {
    await work(core, originOf(config));
  } finally {
    await core.close();
  }
}

const originOf = ({ origin, host, port }: Config) => origin ?? `http://${host}:${port}`;
