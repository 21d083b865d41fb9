import { readFile } from 'node:fs/promises';
import path from 'node:path';
import canonicalize from 'canonicalize';
import { expect } from 'vitest';
import type { LedgerEntryView } from '#domain/contract/views';
import type { Client } from '../support/server.ts';
import { keyOf, type Asked, type Claim, type Journal } from './journal.ts';
import { TreeHeads } from './tree-heads.ts';

/** What the preparation of the house says, before any clients work. */
const PREPARATION = ['house.created', 'role.granted', 'member.entered'];

interface Page {
  entries: LedgerEntryView[];
  size: number;
  head: string;
}

export async function readWholeLedger(client: Client, house: string): Promise<Page> {
  const entries: LedgerEntryView[] = [];
  for (;;) {
    const address = `/houses/${house}/ledger?from=${entries.length}&limit=1000`;
    const page = await client.get<Page>(address);
    entries.push(...page.entries);
    if (page.entries.length === 0) return { ...page, entries };
  }
}

/** The line that must lie in the ledger file, by an encoder that is not the server's (npm: canonicalize, RFC 8785). */
function lineOf(house: string, { leaf, head, ...entry }: LedgerEntryView): { text: string; line: string } {
  const text = canonicalize({ house, ...entry }) ?? '';
  return { text, line: `{"entry":${text},"head":"${head}","leaf":"${leaf}"}` };
}

/** Sequence without a gap, every leaf and every head computed anew from the canonical entries. */
export function checkChain(house: string, { entries, size, head }: Page): void {
  expect(entries.map(({ seq }) => seq)).toEqual(entries.map((_, i) => i));
  expect(size).toBe(entries.length);
  const tree = new TreeHeads(entries.map((entry) => lineOf(house, entry).text));
  for (const entry of entries)
    expect([entry.leaf, entry.head], `entry ${entry.seq}`).toEqual([
      tree.leaf(entry.seq),
      tree.head(entry.seq + 1),
    ]);
  expect(head).toBe(tree.head(size));
}

/** Each request that was accepted stands in the ledger exactly once as it was sent, and nothing stands there besides. */
export function checkClaims({ entries }: Page, journal: Journal): void {
  const found = new Map<string, LedgerEntryView[]>();
  for (const entry of entries) {
    if (PREPARATION.includes(entry.kind)) continue;
    const name = `${entry.kind} ${keyOf(entry)}`;
    found.set(name, [...(found.get(name) ?? []), entry]);
  }
  for (const { kind, key, payload } of journal.acknowledged.flatMap(({ claims }) => claims)) {
    const [entry, ...more] = found.get(`${kind} ${key}`) ?? [];
    expect(more.length, `${kind} ${key} is stated more than once`).toBe(0);
    expect(entry?.payload, `${kind} ${key} was accepted`).toMatchObject(payload);
  }
  const asked = new Set(journal.claims.map(({ kind, key }) => `${kind} ${key}`));
  expect([...found.keys()].filter((name) => !asked.has(name))).toEqual([]);
}

/** How many of these requests the ledger holds already. */
export function countStated({ entries }: Page, asked: readonly Asked[]): number {
  const stated = new Set(entries.map((entry) => `${entry.kind} ${keyOf(entry)}`));
  return asked.filter(({ claims }) => namesOf(claims).every((name) => stated.has(name))).length;
}

export async function readLedgerLines(dataFolder: string, house: string): Promise<string[]> {
  const text = await readFile(path.join(dataFolder, 'houses', house, 'ledger.jsonl'), 'utf8');
  // What stands after the last line feed is a torn line, which nobody was told of.
  return text.split('\n').slice(0, -1);
}

export async function checkLedgerFile(dataFolder: string, house: string, { entries }: Page): Promise<void> {
  const lines = await readLedgerLines(dataFolder, house);
  expect(lines.length).toBe(entries.length);
  for (const entry of entries) expect(lines[entry.seq]).toBe(lineOf(house, entry).line);
}

/**
 * Looks at the file as the killed process left it: an answer is only given when its entry lies there.
 * Whether it was also forced out of the system's cache cannot be seen here: kill -9 leaves the cache whole.
 */
export async function checkAcceptedLines(
  dataFolder: string,
  house: string,
  accepted: readonly Asked[],
): Promise<void> {
  const lines = await readLedgerLines(dataFolder, house);
  const entries = lines.map((line) => (JSON.parse(line) as { entry: LedgerEntryView }).entry);
  const there = new Set(entries.map((entry) => `${entry.kind} ${keyOf(entry)}`));
  const missing = namesOf(accepted.flatMap(({ claims }) => claims)).filter((name) => !there.has(name));
  expect(missing, 'accepted, but not in the ledger file').toEqual([]);
}

function namesOf(claims: readonly Claim[]): string[] {
  return claims.map(({ kind, key }) => `${kind} ${key}`);
}
