import { randomUUID } from 'node:crypto';
import type { InventedHouse } from '#domain/frame/invented/invented-house';
import { boathouse } from '#domain/frame/invented/boathouse/boathouse';
import { fourHundredHouse } from '#domain/frame/invented/four-hundred';
import { threeBayHouse } from '#domain/frame/invented/three-bay';
import { refuse, runCommand } from './command.ts';
import { inventHouse } from './services/invent-house.ts';

const HOUSES: Readonly<Record<string, (firstDay: string) => InventedHouse>> = {
  boathouse: (firstDay) => boathouse(firstDay),
  'three-bay': threeBayHouse,
  'four-hundred': fourHundredHouse,
};

/** `npm run invent -- three-bay`: makes an invented house in the running record. */
const [, , word = ''] = process.argv;
const make = Object.hasOwn(HOUSES, word) ? HOUSES[word] : undefined;
if (!make) refuse(`Say which house: npm run invent -- ${Object.keys(HOUSES).join(' | ')}`);
else
  runCommand(async ({ context }, at) => {
    const keeper = await context.accounts.keeper();
    if (!keeper)
      return refuse(
        'There is no account yet, and a house needs one that keeps its record. Run npm start, open the link that ' +
          `it prints and make your account; then stop it and run npm run invent -- ${word} again.`,
      );
    const house = randomUUID();
    const firstDay = context.now().toISOString().slice(0, 10);
    await inventHouse(context, keeper, { house, newId: randomUUID }, make(firstDay));
    process.stdout.write(`The house is at ${at(`/houses/${house}`)}\n`);
  });
