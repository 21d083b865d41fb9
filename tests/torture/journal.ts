import type { LedgerEntryView } from '#domain/contract/views';
import type { Client } from '../support/server.ts';
import type { SomeFile } from './distinct-jpegs.ts';

/** What must stand in the ledger, exactly once, when a request has been accepted. */
export interface Claim {
  readonly kind: string;
  /** Finds the statement among those of its kind: the client-made id, or the hash of the file. */
  readonly key: string;
  /** These parts of the payload, exactly. */
  readonly payload: Record<string, unknown>;
  readonly file?: SomeFile;
}

/** One request of a client, as it would be repeated after a broken connection. */
export interface Asked {
  readonly claims: readonly Claim[];
  readonly send: (client: Client) => Promise<unknown>;
  /** What the client knows once it has been accepted. */
  readonly learn: () => void;
  acknowledged: boolean;
}

/** What makes a statement the one that a claim means. */
export function keyOf({ kind, payload }: Pick<LedgerEntryView, 'kind' | 'payload'>): string {
  const said = payload as Record<string, string>;
  if (kind === 'photo.added') return said['sha256'] ?? '';
  if (kind.startsWith('tag.')) return said['tag'] ?? '';
  if (kind.startsWith('covering.')) return said['covering'] ?? '';
  return `${said['day']} ${said['text']}`;
}

/** Everything that was ever asked of one house, by all clients over all kills. */
export class Journal {
  readonly asked: Asked[] = [];

  get claims(): Claim[] {
    return this.asked.flatMap(({ claims }) => claims);
  }

  get acknowledged(): Asked[] {
    return this.asked.filter(({ acknowledged }) => acknowledged);
  }

  /** Sent, but the connection broke before the answer. */
  get unanswered(): Asked[] {
    return this.asked.filter(({ acknowledged }) => !acknowledged);
  }
}
