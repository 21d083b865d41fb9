import { verifyArchive } from '#domain/verify/verify-archive';
import { Wrong } from '#domain/verify/wrong';
import { compose } from './compose.ts';
import { readConfig } from './config.ts';
import { RestoreRefused, restoreHouse, type Restored } from './services/archive/restore-house.ts';
import { NoArchive, openArchive } from './storage/archive/open-archive.ts';
import { hashing } from './storage/hashing.ts';
import { sayWhyNot } from './why-not.ts';

/** `npm run restore -- <archive>`: gives this instance a house that it does not have. */
async function main(): Promise<void> {
  const [, , path] = process.argv;
  if (path === undefined)
    throw new RestoreRefused('Say which archive: npm run restore -- <archive.zip or its folder>');
  const archive = await openArchive(path);
  try {
    // Before there is a data folder or a database: a wrong archive must leave nothing behind.
    const verdict = await verifyArchive(archive, hashing);
    const core = await compose({ ...readConfig(), role: 'web', logLevel: 'warn' });
    try {
      const restored = await restoreHouse(core.context, archive, hashing, verdict);
      process.stdout.write(
        `The house “${verdict.name}” is here: ${verdict.entries} entries, ${verdict.originals} originals, ` +
          `tree head ${verdict.head}.\n${sayWhoKeeps(restored)}\n`,
      );
    } finally {
      await core.close();
    }
  } finally {
    await archive.close();
  }
}

function sayWhoKeeps({ adoptedBy, hasAccounts }: Restored): string {
  if (adoptedBy !== null)
    return `Nobody who kept its record has an account here; ${adoptedBy} keeps it now, and the ledger says so.`;
  return hasAccounts
    ? 'It is kept by whoever kept it before.'
    : 'There is no account yet: the first one becomes the keeper of its record.';
}

main().catch((error: unknown) => {
  process.stderr.write(`${sentencesOf(error).join('\n')}\n`);
  process.exit(1);
});

function sentencesOf(error: unknown): readonly string[] {
  if (error instanceof Wrong)
    return ['Nothing was restored: something is wrong with this archive.', error.message];
  if (error instanceof RestoreRefused || error instanceof NoArchive) return [error.message];
  return [sayWhyNot(error)];
}
