import { execFileSync } from 'node:child_process';
import { readFileSync } from 'node:fs';
import os from 'node:os';

export interface BenchRow {
  readonly what: string;
  /** Of this run, on this machine, and of no other. */
  readonly measured: string;
  readonly bare: string;
  readonly ratio: string;
}

/** Prints the machine and one table. Nothing is asserted: a timing is not a test. */
export function sayTable(title: string, rows: readonly BenchRow[]): void {
  const head = { what: title, measured: 'this run', bare: 'bare reference', ratio: 'ratio' };
  const all = [head, ...rows];
  const widths = (['what', 'measured', 'bare', 'ratio'] as const).map((key) =>
    Math.max(...all.map((row) => row[key].length)),
  );
  const line = (row: BenchRow) =>
    [row.what, row.measured, row.bare, row.ratio].map((cell, i) => cell.padEnd(widths[i] ?? 0)).join('  | ');
  console.log([`\n${machine()}`, ...all.map(line)].join('\n'));
}

function machine(): string {
  const [cpu] = os.cpus();
  const memory = `${Math.round(os.totalmem() / 2 ** 30)} GiB`;
  return `${cpu?.model.trim()}, ${os.cpus().length} cores, ${memory}, Node.js ${process.version}, ${postgres()}`;
}

function postgres(): string {
  try {
    return execFileSync('psql', ['--version'], { encoding: 'utf8' }).trim();
  } catch {
    return 'PostgreSQL of unknown version';
  }
}

/** Resident memory of a process in MB (proc(5), VmRSS; VmHWM is its peak). */
export function memoryOf(pid: number): string {
  const status = readFileSync(`/proc/${pid}/status`, 'utf8');
  const of = (name: string) =>
    Math.round(Number(new RegExp(`${name}:\\s+(\\d+)`).exec(status)?.[1] ?? 0) / 1024);
  return `${of('VmRSS')} MB now, ${of('VmHWM')} MB at most`;
}

export async function seconds(work: () => unknown): Promise<number> {
  const start = performance.now();
  await work();
  return (performance.now() - start) / 1000;
}

/** `work` over all items by as many hands as asked for. */
export async function withHands<T>(
  hands: number,
  items: readonly T[],
  work: (item: T) => Promise<unknown>,
): Promise<void> {
  const waiting = [...items];
  const hand = async () => {
    for (let item = waiting.shift(); item !== undefined; item = waiting.shift()) await work(item);
  };
  await Promise.all(Array.from({ length: hands }, hand));
}

export const perSecond = (count: number, time: number) => `${(count / time).toFixed(1)}/s`;
