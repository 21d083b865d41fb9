import { parseArgs } from 'node:util';
import { parsePaper, type Paper } from '#domain/verify/check-paper';
import { verifyArchive } from '#domain/verify/verify-archive';
import { Wrong } from '#domain/verify/wrong';
import { sayVerdict } from './say-verdict.ts';
import { openArchive } from './storage/archive/open-archive.ts';
import { hashing } from './storage/hashing.ts';

const USAGE = `Say which archive: npm run verify -- <archive.zip or its folder>
To compare it with a tree head that was noted elsewhere: --size <entries> --head <hex> [--release <id>]`;

/** `npm run verify -- <archive>`: ends with 0 where nothing is wrong, with 1 otherwise. Needs no database and no server. */
async function main(): Promise<void> {
  const { path, paper } = readArguments(process.argv.slice(2));
  const archive = await openArchive(path);
  try {
    const verdict = await verifyArchive(archive, hashing, { paper });
    process.stdout.write(`${sayVerdict(verdict).join('\n')}\n`);
  } finally {
    await archive.close();
  }
}

function readArguments(args: string[]): { path: string; paper: Paper | null } {
  const text = { type: 'string' } as const;
  const { values, positionals } = parseArgs({
    args,
    allowPositionals: true,
    options: { size: text, head: text, release: text },
  });
  const [path] = positionals;
  const { size = null, head = null, release = null } = values;
  const paper =
    size === null && head === null && release === null ? null : parsePaper({ size, head, release });
  if (path === undefined || positionals.length > 1 || paper === undefined) throw new Error(USAGE);
  return { path, paper };
}

main().catch((error: unknown) => {
  const sentence = error instanceof Error ? error.message : String(error);
  process.stderr.write(`${error instanceof Wrong ? `Wrong. ${sentence}` : sentence}\n`);
  process.exit(1);
});
