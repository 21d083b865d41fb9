import { randomUUID } from 'node:crypto';
import type { ReleaseView, ReviewLineView, ReviewView } from '#domain/contract/review-views';
import type { UploadOutcome } from '#domain/contract/views';
import { codeOf, type Client } from './server.ts';

/** What somebody says who has looked at every line as it stands. */
export function asSeen(lines: readonly ReviewLineView[], waived: Readonly<Record<string, string>> = {}) {
  return lines.map(({ mark, basis }) => ({ mark, basis, waived: waived[mark] ?? null }));
}

/** What a machine finds out of a region meanwhile is news to whoever reviews: then it is looked at once more. */
const LOOKS = 20;

/** Looks at a covering that is ready, and releases it. */
export async function releaseAsSeen(
  inspector: Client,
  covering: string,
  waived: Readonly<Record<string, string>> = {},
  note = '',
): Promise<ReleaseView> {
  for (let look = 1; ; look++) {
    const { lines } = await inspector.get<ReviewView>(`/coverings/${covering}/review`);
    const said = { id: randomUUID(), members: asSeen(lines, waived), note };
    const released = inspector.post<ReleaseView>(`/coverings/${covering}/releases`, said);
    if (look === LOOKS || (await codeOf(released)) !== 'evidence-changed') return released;
  }
}

/** Uploads one file that must be taken; its photo's id. */
export async function addPhoto(
  client: Client,
  house: string,
  name: string,
  bytes: Uint8Array,
): Promise<string> {
  const { results } = await client.upload<{ results: UploadOutcome[] }>(house, [{ name, bytes }]);
  const [outcome] = results;
  if (!outcome || outcome.outcome === 'refused') throw new Error(`${name} was refused.`);
  return outcome.photo.id;
}
