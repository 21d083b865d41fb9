import { readdir } from 'node:fs/promises';
import path from 'node:path';
import type { Db } from './open-database.ts';
import { LedgerFile, type StoredLine } from './ledger-file.ts';
import { LedgerMismatch, appendLines } from './append-lines.ts';
import { openLedger, type LedgerLine } from './ledger-store.ts';

/** What keeps committed entries outside the database; the served PostgreSQL needs none. */
export interface LedgerKeeper {
  /** Resolves when the house's first `size` entries are on disk, of which `lines` are the newest. */
  keep(house: string, size: number, lines: readonly LedgerLine[]): Promise<void>;
  close(): Promise<void>;
}

/** The ledger files of all houses below `<data>/houses`, in step with the embedded database. */
export class LedgerFolder implements LedgerKeeper {
  readonly #files = new Map<string, Promise<LedgerFile>>();

  private constructor(
    private readonly db: Db,
    private readonly folder: string,
  ) {}

  /** Brings both sides to the longer of the two; throws a plain sentence where they tell different stories. */
  static async open(db: Db, folder: string): Promise<LedgerFolder> {
    const keeper = new LedgerFolder(db, folder);
    try {
      for (const house of await keeper.#housesOnDisk()) await keeper.#reconcile(house);
      for (const { houseId, size } of await db.selectFrom('ledger').select(['houseId', 'size']).execute())
        await keeper.keep(houseId, size, []);
    } catch (error) {
      await keeper.close();
      throw error;
    }
    return keeper;
  }

  async keep(house: string, size: number, lines: readonly LedgerLine[]): Promise<void> {
    const file = await this.#file(house);
    await file.reach(size, lines, (from, to) => this.#read(house, from, to));
  }

  async close(): Promise<void> {
    for (const file of this.#files.values()) await (await file).close();
    this.#files.clear();
  }

  #file(house: string): Promise<LedgerFile> {
    const known = this.#files.get(house);
    if (known) return known;
    const opening = LedgerFile.open(this.#path(house)).then(({ file }) => file);
    this.#files.set(house, opening);
    return opening;
  }

  async #reconcile(house: string): Promise<void> {
    const { file, lines } = await LedgerFile.open(this.#path(house));
    this.#files.set(house, Promise.resolve(file));
    await replayMissing(this.db, house, lines);
  }

  async #housesOnDisk(): Promise<string[]> {
    const names = await readdir(this.folder).catch(() => []);
    return names.filter((name) => /^[0-9a-f-]{36}$/.test(name)).sort();
  }

  #path(house: string): string {
    return path.join(this.folder, house, 'ledger.jsonl');
  }

  async #read(house: string, from: number, to: number): Promise<LedgerLine[]> {
    const rows = await this.db
      .selectFrom('ledgerEntry')
      .select(['seq', 'canonical', 'leaf', 'head'])
      .where('houseId', '=', house)
      .where('seq', '>=', from)
      .where('seq', '<', to)
      .orderBy('seq')
      .execute();
    return rows.map((row) => ({ house, ...row }));
  }
}

/** Says again, in one transaction, what the file holds and the database lacks. */
async function replayMissing(db: Db, house: string, lines: readonly StoredLine[]): Promise<void> {
  await assertSameStory(db, house, lines);
  if (lines.length === 0) return;
  await db.transaction().execute(async (tx) => {
    await openLedger(tx, house);
    await appendLines(tx, house, (size) => lines.slice(size));
  });
}

async function assertSameStory(db: Db, house: string, lines: readonly StoredLine[]): Promise<void> {
  const last = await db
    .selectFrom('ledgerEntry')
    .select(['seq', 'head'])
    .where('houseId', '=', house)
    .where('seq', '<', lines.length)
    .orderBy('seq', 'desc')
    .limit(1)
    .executeTakeFirst();
  if (last && last.head.toString('hex') !== lines[last.seq]?.head) throw new LedgerMismatch(house, last.seq);
}
