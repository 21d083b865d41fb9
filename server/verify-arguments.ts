import { parseArgs } from 'node:util';
import { parsePaper, type Paper } from '#domain/verify/check-paper';

const USAGE = `Say which archive: npm run verify -- <archive.zip or its folder>
To compare it with a tree head that was noted elsewhere: --size <entries> --head <hex> [--release <id>]`;

/** What `npm run verify --` is given: which archive, and what is noted elsewhere of it. Throws a plain sentence. */
export function readVerifyArguments(args: string[]): { path: string; paper: Paper | null } {
  const { values, positionals } = readOptions(args);
  const [path] = positionals;
  if (path === undefined || positionals.length > 1) throw new Error(USAGE);
  const { size = null, head = null, release = null } = values;
  if (size === null && head === null && release === null) return { path, paper: null };
  if (size === null || head === null)
    throw new Error(
      'To compare an archive with a tree head that was noted elsewhere both are needed: --size <entries>, over ' +
        'how many entries it was taken, and --head <hex>.',
    );
  const paper = parsePaper({ size, head, release });
  if (paper) return { path, paper };
  if (!parsePaper({ size: '1', head, release }))
    throw new Error(`--head must be a tree head, 64 signs from 0 to 9 and a to f, and is “${head}”.`);
  throw new Error(`--size must be a number, over how many entries the head was taken, and is “${size}”.`);
}

function readOptions(args: string[]) {
  const text = { type: 'string' } as const;
  try {
    return parseArgs({
      args,
      allowPositionals: true,
      options: { size: text, head: text, release: text },
    });
  } catch (error) {
    if ((error as NodeJS.ErrnoException).code === 'ERR_PARSE_ARGS_INVALID_OPTION_VALUE')
      throw new Error('Each of --size, --head and --release needs a value behind it.', { cause: error });
    throw new Error(USAGE, { cause: error });
  }
}
