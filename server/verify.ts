import { verifyArchive } from '#domain/verify/verify-archive';
import { Wrong } from '#domain/verify/wrong';
import { sayVerdict } from './say-verdict.ts';
import { openArchive } from './storage/archive/open-archive.ts';
import { hashing } from './storage/hashing.ts';
import { readVerifyArguments } from './verify-arguments.ts';

/** `npm run verify -- <archive>`: ends with 0 where nothing is wrong, with 1 otherwise. Needs no database and no server. */
async function main(): Promise<void> {
  const { path, paper } = readVerifyArguments(process.argv.slice(2));
  const archive = await openArchive(path);
  try {
    const verdict = await verifyArchive(archive, hashing, { paper });
    process.stdout.write(`${sayVerdict(verdict).join('\n')}\n`);
  } finally {
    await archive.close();
  }
}

main().catch((error: unknown) => {
  const sentence = error instanceof Error ? error.message : String(error);
  process.stderr.write(`${error instanceof Wrong ? `Wrong. ${sentence}` : sentence}\n`);
  process.exit(1);
});
