import { readConfig } from './config.ts';
import { compose } from './compose.ts';
import { rebuildAll } from './storage/rebuild.ts';
import { sayWhyNot } from './why-not.ts';

/** `npm run rebuild`: makes the tables of every house anew from its ledger. */
async function main(): Promise<void> {
  const core = await compose({ ...readConfig(), role: 'web' });
  try {
    for (const { house, entries } of await rebuildAll(core.database.db))
      process.stdout.write(`House ${house}: ${entries} entries applied again.\n`);
  } finally {
    await core.close();
  }
}

main().catch((error: unknown) => {
  process.stderr.write(`${sayWhyNot(error)}\n`);
  process.exit(1);
});
