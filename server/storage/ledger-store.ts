import { sql } from 'kysely';
import { canonicalJson } from '#domain/ledger/canonical-json';
import {
  appendLeaf,
  leafHash,
  packFrontier,
  treeHead,
  unpackFrontier,
  type Frontier,
} from '#domain/ledger/merkle-tree';
import { parseEntry, type Entry, type Statement } from '#domain/ledger/statements';
import type { Person } from '#domain/contract/shapes';
import type { HouseEvent } from '#domain/contract/house-events';
import { project } from './projection/project.ts';
import { sha256 } from './sha256.ts';
import type { Db } from './open-database.ts';
import type { Tx } from './tx.ts';

/** An entry as it lies in the ledger: its exact text with its hashes. */
export interface LedgerLine {
  readonly house: string;
  readonly seq: number;
  readonly canonical: string;
  readonly leaf: Uint8Array;
  readonly head: Uint8Array;
}

const EMPTY_HEAD = sha256(new Uint8Array());

/** Starts the ledger of a house; false when it has one already. */
export async function openLedger(tx: Tx, house: string): Promise<boolean> {
  const row = { houseId: house, size: 0, frontier: Buffer.alloc(0), head: Buffer.from(EMPTY_HEAD) };
  const inserted = await tx
    .insertInto('ledger')
    .values(row)
    .onConflict((c) => c.doNothing())
    .returning('size')
    .execute();
  return inserted.length === 1;
}

/** Takes the house's row lock and reads the right edge of its tree; undefined where there is no such house. */
export async function lockLedger(tx: Tx, house: string): Promise<Frontier | undefined> {
  const row = await tx
    .selectFrom('ledger')
    .select(['size', 'frontier'])
    .where('houseId', '=', house)
    .forUpdate()
    .executeTakeFirst();
  return row && unpackFrontier(row.size, row.frontier);
}

/** Appends entries to one house's ledger inside one transaction and applies each to the tables. */
export class LedgerWriter {
  readonly written: LedgerLine[] = [];
  #frontier: Frontier;

  constructor(
    private readonly tx: Tx,
    private readonly house: string,
    frontier: Frontier,
  ) {
    this.#frontier = frontier;
  }

  get nextSeq(): number {
    return this.#frontier.size;
  }

  async say(statement: Statement, at: Date, by: Person | null): Promise<Entry> {
    const entry = { house: this.house, seq: this.nextSeq, at: at.toISOString(), by, ...statement };
    return this.append(canonicalJson(entry));
  }

  /** Appends an entry by its exact text: also the way by which a lost database is filled again. */
  async append(canonical: string): Promise<Entry> {
    const entry = parseEntry(JSON.parse(canonical));
    if (entry.house !== this.house || entry.seq !== this.nextSeq)
      throw new Error(
        `Entry ${entry.seq} of house ${entry.house} does not follow entry ${this.nextSeq - 1}.`,
      );
    const leaf = leafHash(sha256, new TextEncoder().encode(canonical));
    this.#frontier = appendLeaf(sha256, this.#frontier, leaf);
    const line = {
      house: this.house,
      seq: entry.seq,
      canonical,
      leaf,
      head: treeHead(sha256, this.#frontier),
    };
    await this.#insert(line, entry);
    await project(this.tx, entry);
    this.written.push(line);
    return entry;
  }

  async #insert(line: LedgerLine, entry: Entry): Promise<void> {
    await this.tx
      .insertInto('ledgerEntry')
      .values({
        houseId: this.house,
        seq: line.seq,
        at: entry.at,
        kind: entry.kind,
        canonical: line.canonical,
        leaf: Buffer.from(line.leaf),
        head: Buffer.from(line.head),
      })
      .execute();
    await this.tx
      .updateTable('ledger')
      .set({
        size: this.#frontier.size,
        frontier: Buffer.from(packFrontier(this.#frontier)),
        head: Buffer.from(line.head),
      })
      .where('houseId', '=', this.house)
      .execute();
  }
}

export const CHANNEL = 'arakabe';

/** Tells every process of this database, when the transaction commits; outside of one, at once. */
export async function announce(db: Db, house: string, event: HouseEvent): Promise<void> {
  await sql`select pg_notify(${CHANNEL}, ${JSON.stringify({ house, event })})`.execute(db);
}
