import { open, mkdir, readFile, type FileHandle } from 'node:fs/promises';
import path from 'node:path';
import { fsyncFolder } from './fsync-folder.ts';
import type { LedgerLine } from './ledger-store.ts';

/**
 * The ledger of one house as a file, one entry a line, each line on disk (fsync) before it counts.
 * The embedded database never fsyncs; this file makes it whole after a power cut.
 * A line: {"entry":<canonical entry>,"head":"<hex>","leaf":"<hex>"}, itself canonical JSON.
 */
export class LedgerFile {
  #handle: FileHandle | undefined;
  #size = 0;
  #nextSeq = 0;
  #queue: Promise<void> = Promise.resolve();

  private constructor(readonly path: string) {}

  /** Opens or makes the file; a last line that a power cut tore is cut off, since nobody was told 'accepted'. */
  static async open(file: string): Promise<{ file: LedgerFile; lines: StoredLine[] }> {
    await mkdir(path.dirname(file), { recursive: true });
    const ledger = new LedgerFile(file);
    ledger.#handle = await open(file, 'a+');
    const bytes = await readFile(file);
    const whole = bytes.lastIndexOf(0x0a) + 1;
    if (whole < bytes.length) await ledger.#handle.truncate(whole);
    await ledger.#handle.sync();
    await fsyncFolder(path.dirname(file));
    const lines = bytes.subarray(0, whole).toString('utf8').split('\n').slice(0, -1).map(parseLine);
    ledger.#size = whole;
    ledger.#nextSeq = lines.length;
    return { file: ledger, lines };
  }

  get nextSeq(): number {
    return this.#nextSeq;
  }

  /**
   * Resolves when every entry below `size` is on disk, in order whatever the order of the calls.
   * `lines` are the newest ones; `missing` fetches what an earlier failed write left out.
   */
  reach(size: number, lines: readonly LedgerLine[], missing: Fetch): Promise<void> {
    const turn = this.#queue.then(() => this.#reach(size, lines, missing));
    this.#queue = turn.catch(() => undefined);
    return turn;
  }

  async #reach(size: number, lines: readonly LedgerLine[], missing: Fetch): Promise<void> {
    if (size <= this.#nextSeq) return;
    const fresh = lines.filter((line) => line.seq >= this.#nextSeq);
    const from = fresh[0]?.seq ?? size;
    const gap = from > this.#nextSeq ? await missing(this.#nextSeq, from) : [];
    await this.#write([...gap, ...fresh]);
  }

  async #write(lines: readonly LedgerLine[]): Promise<void> {
    const handle = this.#handle;
    if (!handle) throw new Error('The ledger file is closed.');
    const bytes = Buffer.from(lines.map(formatLine).join(''));
    try {
      await handle.appendFile(bytes);
      await handle.datasync();
    } catch (error) {
      // What was half written must not stand before the next line.
      await handle.truncate(this.#size).catch(() => undefined);
      throw error;
    }
    this.#size += bytes.length;
    this.#nextSeq += lines.length;
  }

  async close(): Promise<void> {
    await this.#queue;
    await this.#handle?.close();
    this.#handle = undefined;
  }
}

type Fetch = (from: number, to: number) => Promise<LedgerLine[]>;

export interface StoredLine {
  readonly canonical: string;
  readonly head: string;
}

export function formatLine({ canonical, head, leaf }: Omit<LedgerLine, 'house' | 'seq'>): string {
  return `{"entry":${canonical},"head":"${hex(head)}","leaf":"${hex(leaf)}"}\n`;
}

/** Takes the entry's exact text out of the line: parsing and writing it again must not be what is hashed. */
function parseLine(line: string): StoredLine {
  const match = /^\{"entry":(.*),"head":"([0-9a-f]{64})","leaf":"[0-9a-f]{64}"\}$/su.exec(line);
  return { canonical: match?.[1] ?? '', head: match?.[2] ?? '' };
}

const hex = (bytes: Uint8Array) => Buffer.from(bytes).toString('hex');
