import type { StampsView, StampTroubleReason } from '#domain/contract/stamps';

/** A tree head's time stamp (RFC 3161). */
export interface HeadStamp {
  /** The token as the service signed it, DER. */
  readonly token: Uint8Array;
  /** genTime, ISO 8601 UTC. */
  readonly at: string;
  /** The service's name, from its certificate. */
  readonly by: string;
}

/** No stamp, and why; `detail` is for the log. */
export class StampTrouble extends Error {
  constructor(
    readonly reason: StampTroubleReason,
    readonly detail: string,
  ) {
    super(`${reason}: ${detail}`);
  }
}

/** A time-stamp service; server/stamping implements it. */
export interface TimeStamps {
  /** Has these bytes stamped; whatever is not a stamp of exactly this request is thrown as StampTrouble. */
  stamp(data: Uint8Array): Promise<HeadStamp>;
}

/** Which houses want a stamp and get none; stamps themselves are in the ledger. server/storage implements it. */
export interface StampLog {
  /** Houses without a stamp since `before`, and those whose last request failed. */
  due(before: Date): Promise<string[]>;
  trouble(house: string): Promise<StampsView['trouble']>;
  /** null: the last request brought a stamp. */
  noteTrouble(house: string, reason: StampTroubleReason | null): Promise<void>;
}
