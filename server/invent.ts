import { randomUUID } from 'node:crypto';
import type { InventedHouse } from '#domain/frame/invented/invented-house';
import { fourHundredHouse } from '#domain/frame/invented/four-hundred';
import { threeBayHouse } from '#domain/frame/invented/three-bay';
import { compose } from './compose.ts';
import { ConfigError, readConfig, type Config } from './config.ts';
import { inventHouse } from './services/invent-house.ts';
import { sayWhyNot } from './why-not.ts';

const HOUSES: Readonly<Record<string, (firstDay: string) => InventedHouse>> = {
  'three-bay': threeBayHouse,
  'four-hundred': fourHundredHouse,
};

/** `npm run invent -- three-bay`: makes an invented house in the running record. */
async function main(): Promise<void> {
  const [, , word = ''] = process.argv;
  const make = Object.hasOwn(HOUSES, word) ? HOUSES[word] : undefined;
  if (!make) return refuse(`Say which house: npm run invent -- ${Object.keys(HOUSES).join(' | ')}`);
  const config: Config = { ...readConfig(), role: 'web', logLevel: 'warn' };
  const core = await compose(config);
  try {
    const keeper = await core.context.accounts.keeper();
    if (!keeper)
      return refuse('There is no account yet that could own a house. Make the first one by npm start.');
    const house = randomUUID();
    const firstDay = core.context.now().toISOString().slice(0, 10);
    await inventHouse(core.context, keeper, { house, newId: randomUUID }, make(firstDay));
    process.stdout.write(`The house is at ${originOf(config)}/houses/${house}\n`);
  } finally {
    await core.close();
  }
}

function refuse(sentence: string): void {
  process.stderr.write(`${sentence}\n`);
  process.exitCode = 1;
}

const originOf = ({ origin, host, port }: Config) => origin ?? `http://${host}:${port}`;

main().catch((error: unknown) => {
  const sentences = error instanceof ConfigError ? error.sentences : [sayWhyNot(error)];
  for (const sentence of sentences) process.stderr.write(`${sentence}\n`);
  process.exit(1);
});
