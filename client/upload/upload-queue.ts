import type { Problem } from '#domain/contract/problems';
import type { CaptureDoubt } from '#domain/photo/capture-doubts';

/** The files on their way to the server, as a pure state: what the driver does stands in upload-driver.ts. */

export type UploadState =
  | { readonly is: 'waiting' }
  | { readonly is: 'sending'; readonly sent: number }
  /** All bytes have left; the server is writing them to its disk. */
  | { readonly is: 'storing' }
  | { readonly is: 'already-here'; readonly photo: string }
  | {
      readonly is: 'added';
      readonly photo: string;
      readonly position: PositionOnRecord;
      readonly against: readonly PhotoTrouble[];
    }
  /** The server has looked at the file and does not take it. */
  | { readonly is: 'refused'; readonly problem: Problem }
  /** No answer about the file: null where none came at all. */
  | { readonly is: 'failed'; readonly problem: Problem | null }
  /** The browser cannot read it any more: it was moved, changed or taken out with its card. */
  | { readonly is: 'unreadable' }
  /** Another window of this browser has sent it, or left it out. */
  | { readonly is: 'elsewhere' };

/** Of a photo that has arrived: in its file, at least that of the device beside it, or none. */
export type PositionOnRecord = 'file' | 'device' | 'none';

/** Why a photo that has arrived may be of no use; while its place is near, it can be taken again. */
export type PhotoTrouble = CaptureDoubt | 'undated' | 'off-site';

/** Whoever chose a file: on a shared phone nothing is sent in another one's name. */
export interface Chooser {
  readonly id: string;
  readonly name: string;
}

export interface UploadItem {
  readonly id: string;
  readonly house: string;
  readonly fileName: string;
  readonly bytes: number;
  readonly by: Chooser;
  /** Whether the browser keeps it beyond this page. */
  readonly isKept: boolean;
  readonly state: UploadState;
}

export type UploadQueue = readonly UploadItem[];

export type UploadEvent =
  | { type: 'chosen'; items: readonly Omit<UploadItem, 'state'>[] }
  | { type: 'kept'; id: string }
  | { type: 'moved'; id: string; state: UploadState }
  | { type: 'again'; ids: readonly string[] }
  | { type: 'device-position'; photo: string }
  | { type: 'leave-out'; id: string }
  | { type: 'tidy'; house: string };

export const AT_ONCE = 2;

export function reduceUploads(queue: UploadQueue, event: UploadEvent): UploadQueue {
  switch (event.type) {
    case 'chosen':
      if (event.items.length === 0) return queue;
      return [...queue, ...event.items.map((item): UploadItem => ({ ...item, state: { is: 'waiting' } }))];
    case 'kept':
      return queue.map((item) => (item.id === event.id ? { ...item, isKept: true } : item));
    case 'moved':
      return queue.map((item) => (item.id === event.id ? { ...item, state: event.state } : item));
    case 'again':
      return queue.map((item) =>
        event.ids.includes(item.id) && canSendAgain(item) ? { ...item, state: { is: 'waiting' } } : item,
      );
    case 'device-position':
      return queue.map((item) =>
        item.state.is === 'added' && item.state.photo === event.photo
          ? { ...item, state: { ...item.state, position: 'device' } }
          : item,
      );
    case 'leave-out':
      return queue.filter((item) => item.id !== event.id || isMoving(item));
    case 'tidy':
      return queue.filter((item) => item.house !== event.house || !isOver(item));
  }
}

/** The files of this account to start now: in order of choice, never more than AT_ONCE on the way. */
export function nextToSend(queue: UploadQueue, account: string | null, atOnce = AT_ONCE): UploadItem[] {
  const free = atOnce - queue.filter(isMoving).length;
  return queue
    .filter(({ state, by }) => state.is === 'waiting' && by.id === account)
    .slice(0, Math.max(0, free));
}

export function isMoving({ state }: Pick<UploadItem, 'state'>): boolean {
  return state.is === 'sending' || state.is === 'storing';
}

export function isOver(item: Pick<UploadItem, 'state'>): boolean {
  return !isMoving(item) && item.state.is !== 'waiting' && !isUnheard(item);
}

/** No server heard of it, an ill one, or only of a part: the same file is sent again by itself. */
export function isUnheard({ state }: Pick<UploadItem, 'state'>): boolean {
  return state.is === 'failed' && (state.problem === null || isPassing(state.problem));
}

function isPassing({ status, code }: Problem): boolean {
  return status === 408 || status === 429 || status >= 500 || code === 'photo-interrupted';
}

export function canSendAgain({ state }: UploadItem): boolean {
  return state.is === 'failed';
}

/** Arrived, or settled in another window: nobody has to look at it again. */
export function isSettled({ state }: Pick<UploadItem, 'state'>): boolean {
  return state.is === 'added' || state.is === 'already-here' || state.is === 'elsewhere';
}

/** Added without a position in its file: said in its row, since nobody would notice. */
export function lacksPosition({ state }: Pick<UploadItem, 'state'>): boolean {
  return state.is === 'added' && state.position !== 'file';
}

/** Added, but something speaks against it. */
export function isDoubtful({ state }: Pick<UploadItem, 'state'>): boolean {
  return state.is === 'added' && state.against.length > 0;
}

/** Would be lost if the page were left now. */
export function isAtRisk(item: UploadItem): boolean {
  return !isOver(item) && !item.isKept;
}

export interface UploadSummary {
  readonly total: number;
  readonly over: number;
  readonly bytes: number;
  readonly bytesDone: number;
  readonly added: number;
  readonly known: number;
  readonly elsewhere: number;
  readonly refused: number;
  readonly failed: number;
  readonly unheard: number;
  readonly atRisk: number;
}

export function summarize(queue: UploadQueue): UploadSummary {
  const count = (...states: UploadState['is'][]) =>
    queue.filter(({ state }) => states.includes(state.is)).length;
  return {
    total: queue.length,
    over: queue.filter(isOver).length,
    bytes: queue.reduce((sum, { bytes }) => sum + bytes, 0),
    bytesDone: queue.reduce((sum, item) => sum + bytesDone(item), 0),
    added: count('added'),
    known: count('already-here'),
    elsewhere: count('elsewhere'),
    refused: count('refused', 'unreadable'),
    failed: count('failed'),
    unheard: queue.filter(isUnheard).length,
    atRisk: queue.filter(isAtRisk).length,
  };
}

function bytesDone(item: UploadItem): number {
  const { state, bytes } = item;
  if (state.is === 'waiting' || isUnheard(item)) return 0;
  // Progress counts the wrapping of the request too, so it may run past the file's own size.
  return state.is === 'sending' ? Math.min(state.sent, bytes) : bytes;
}
