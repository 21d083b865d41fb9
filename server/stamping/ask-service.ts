import { StampTrouble } from '../services/stamps.ts';

/** A token with the certificates of its service has some 6 kB. */
const ANSWER_LIMIT = 256 * 1024;

/** One request by HTTP (RFC 3161 §3.4). Throws StampTrouble 'silent' where no answer comes in time or whole. */
export async function askService(url: string, request: Uint8Array, patienceMs: number): Promise<Uint8Array> {
  try {
    const answer = await fetch(url, {
      method: 'POST',
      headers: { 'content-type': 'application/timestamp-query', accept: 'application/timestamp-reply' },
      body: Uint8Array.from(request),
      signal: AbortSignal.timeout(patienceMs),
    });
    if (!answer.ok) throw new Error(`HTTP ${answer.status}`);
    return await readUpTo(answer, ANSWER_LIMIT);
  } catch (error) {
    throw new StampTrouble('silent', reasonOf(error));
  }
}

async function readUpTo(answer: Response, limit: number): Promise<Uint8Array> {
  const parts: Uint8Array[] = [];
  let length = 0;
  const reader: ReadableStreamDefaultReader<Uint8Array> | undefined = answer.body?.getReader();
  for (let part = await reader?.read(); part?.value; part = await reader?.read()) {
    length += part.value.length;
    if (length > limit) throw new Error(`more than ${limit} bytes`);
    parts.push(part.value);
  }
  return Buffer.concat(parts);
}

function reasonOf(error: unknown): string {
  if (!(error instanceof Error)) return String(error);
  return error.cause instanceof Error ? `${error.message}: ${error.cause.message}` : error.message;
}
