import { readConfig } from './config.ts';
import { compose } from './compose.ts';
import { rebuildAll } from './storage/rebuild.ts';
import { sayWhyNot } from './why-not.ts';

/** `npm run rebuild`: makes the tables of every house anew from its ledger. */
async function main(): Promise<void> {
  const core = await compose({ ...readConfig(), role: 'web' });
  try {
    const houses = await rebuildAll(core.database.db);
    for (const { house, entries } of houses)
      process.stdout.write(`House ${house}: ${entries} entries applied again.\n`);
    if (houses.length === 0)
      process.stdout.write('There is no house here whose tables could be made anew.\n');
  } finally {
    await core.close();
  }
}

main().catch((error: unknown) => {
  process.stderr.write(`${sayWhyNot(error)}\n`);
  process.exit(1);
});
