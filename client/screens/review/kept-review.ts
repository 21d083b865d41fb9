import type { KeyValueStorage } from '../../outbox/browser-storage.ts';
import { NOTHING_SAID, type Answer, type ReviewDraft } from './review-draft.ts';

/** The number is that of its form: what an older version of this program kept is not read. */
const PREFIX = 'arakabe.review.1.';
const keyOf = (account: string, covering: string) => `${PREFIX}${account}.${covering}`;

/** A review takes longer than a window lives: it is kept in the browser until it ends in a release. Null ends it. */
export function keepReview(
  storage: KeyValueStorage | null,
  account: string,
  covering: string,
  draft: ReviewDraft | null,
): void {
  try {
    if (draft) storage?.setItem(keyOf(account, covering), JSON.stringify(draft));
    else storage?.removeItem(keyOf(account, covering));
  } catch {
    // Full or forbidden: the review then lasts until the screen is left.
  }
}

export function readReview(storage: KeyValueStorage | null, account: string, covering: string): ReviewDraft {
  try {
    return parseReview(JSON.parse(storage?.getItem(keyOf(account, covering)) ?? 'null')) ?? NOTHING_SAID;
  } catch {
    return NOTHING_SAID;
  }
}

/** Anything may have written there. */
export function parseReview(value: unknown): ReviewDraft | null {
  if (!isRecord(value) || !isRecord(value['said']) || typeof value['note'] !== 'string') return null;
  const { said, reasons, note, doubts, takenUpAfter } = value;
  if (!Array.isArray(reasons) || !reasons.every((reason) => typeof reason === 'string')) return null;
  const entries = Object.entries(said);
  return entries.every(([, entry]) => isSaid(entry))
    ? {
        said: Object.fromEntries(entries) as ReviewDraft['said'],
        reasons,
        note,
        doubts: isRecord(doubts) ? Object.fromEntries(Object.entries(doubts).filter(isDoubt)) : {},
        takenUpAfter: typeof takenUpAfter === 'string' ? takenUpAfter : null,
      }
    : null;
}

function isSaid(value: unknown): value is { basis: string; answer: Answer } {
  return isRecord(value) && typeof value['basis'] === 'string' && isAnswer(value['answer']);
}

function isDoubt(entry: [string, unknown]): entry is [string, ReviewDraft['doubts'][string]] {
  const [, value] = entry;
  return isRecord(value) && typeof value['tag'] === 'string' && typeof value['reason'] === 'string';
}

function isAnswer(value: unknown): boolean {
  if (!isRecord(value)) return false;
  if (value['is'] === 'seen') return true;
  if (value['is'] === 'waived') return typeof value['reason'] === 'string';
  return value['is'] === 'missing' && typeof value['note'] === 'string';
}

const isRecord = (value: unknown): value is Record<string, unknown> =>
  typeof value === 'object' && value !== null && !Array.isArray(value);
