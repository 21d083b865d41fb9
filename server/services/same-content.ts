import { canonicalJson } from '#domain/ledger/canonical-json';
import { Failure } from './failure.ts';

export function sameContent(a: unknown, b: unknown): boolean {
  return canonicalJson(a) === canonicalJson(b);
}

/** An id that comes again must bring the same content: then it is a repeated request, else two things with one name. */
export function assertRepeated(id: string, before: unknown, now: unknown): void {
  if (!sameContent(before, now)) throw new Failure('id-used-for-something-else', { id });
}
