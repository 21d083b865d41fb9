import { parseArgs } from 'node:util';
import { parsePaper, type Paper } from '#domain/verify/check-paper';
import { verifyArchive, type Verdict } from '#domain/verify/verify-archive';
import { Wrong } from '#domain/verify/wrong';
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
    process.stdout.write(`${sayYes(verdict).join('\n')}\n`);
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

function sayYes({ house, name, entries, head, madeAt, originals, bytes, ...verdict }: Verdict): string[] {
  const { records, releases, back, paper } = verdict;
  return [
    `Nothing is wrong with this archive of “${name}” (house ${house}), made at ${madeAt}.`,
    `${entries} entries of the ledger, each with its hash and its tree head.`,
    `${originals} originals, ${bytes} bytes; ${records} records that stand; ${releases} releases.`,
    ...(back.length === 0
      ? []
      : [`Times of ${back.length} entries lie before the one before, first on line ${(back[0] ?? 0) + 1}.`]),
    `Tree head: ${head}`,
    ...(paper === null
      ? [
          'Compare it with what was noted elsewhere, e.g. on a release sheet: only that shows that nothing was written anew.',
        ]
      : sayPaper(paper)),
  ];
}

function sayPaper({ size, release, includesRelease, withdrawn }: NonNullable<Verdict['paper']>): string[] {
  const same = `It is the archive that the paper speaks of: the head over its first ${size} entries is the same.`;
  if (release === null) return [same];
  return [
    same,
    includesRelease
      ? `The release ${release} lies under that head.`
      : `The release ${release} is in it and rests on that head; its own words stand behind it.`,
    ...(withdrawn
      ? [
          `It stands no more: ${withdrawn.by ?? 'the program'} took it back at ${withdrawn.at}: ${withdrawn.reason}`,
        ]
      : []),
  ];
}

main().catch((error: unknown) => {
  const sentence = error instanceof Error ? error.message : String(error);
  process.stderr.write(`${error instanceof Wrong ? `Wrong. ${sentence}` : sentence}\n`);
  process.exit(1);
});
