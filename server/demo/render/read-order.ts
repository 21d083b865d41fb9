import { parseArgs } from 'node:util';
import type { Shot } from './shots/shot.ts';

export interface Order {
  readonly folder: string;
  readonly width: number;
  readonly samples: number;
  readonly threads: number;
  readonly shots: readonly Shot[];
}

const NUMBERS = {
  width: { usual: 240, least: 16, most: 4000 },
  samples: { usual: 8, least: 1, most: 1024 },
  threads: { usual: 1, least: 1, most: 64 },
} as const;

const USAGE = 'npm run render -- <out folder> [--width 240] [--samples 8] [--threads 1] [--only name,name]';

/** What somebody asks for, or in a sentence what is wrong with it. */
export function readOrder(
  argv: readonly string[],
  shots: readonly Shot[],
): Order | { readonly problem: string } {
  const words = wordsOf(argv);
  if ('problem' in words) return words;
  const { folder, values } = words;
  const numbers = { width: 0, samples: 0, threads: 0 };
  for (const [name, { usual, least, most }] of entriesOf(NUMBERS)) {
    const value = values[name] === undefined ? usual : Number(values[name]);
    if (!Number.isInteger(value) || value < least || value > most)
      return { problem: `--${name} is a whole number from ${least} to ${most}, not ${values[name] ?? ''}.` };
    numbers[name] = value;
  }
  const names = values.only?.split(',') ?? shots.map(({ name }) => name);
  const unknown = names.filter((name) => !shots.some((shot) => shot.name === name));
  if (unknown.length > 0)
    return {
      problem: `There is no picture ${unknown.join(', ')}; there is ${shots.map(({ name }) => name).join(', ')}.`,
    };
  return {
    folder,
    ...numbers,
    shots: names.flatMap((name) => shots.find((shot) => shot.name === name) ?? []),
  };
}

interface Words {
  readonly folder: string;
  readonly values: Partial<Record<'width' | 'samples' | 'threads' | 'only', string>>;
}

function wordsOf(argv: readonly string[]): Words | { readonly problem: string } {
  const text = { type: 'string' } as const;
  try {
    const { values, positionals } = parseArgs({
      args: [...argv],
      allowPositionals: true,
      options: { width: text, samples: text, threads: text, only: text },
    });
    const [folder, ...more] = positionals;
    if (folder === undefined || more.length > 0) return { problem: `Say one folder to write to: ${USAGE}` };
    return { folder, values };
  } catch {
    return { problem: `An option is unknown or has no value: ${USAGE}` };
  }
}

function entriesOf<K extends string, V>(record: Readonly<Record<K, V>>): [K, V][] {
  return Object.entries(record) as [K, V][];
}
