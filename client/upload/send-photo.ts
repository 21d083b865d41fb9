import type { UploadOutcome } from '#domain/contract/views';
import { addressOf } from '../api/address.ts';
import { call } from '../api/call.ts';
import { OfflineError, ProblemError, unexplainedProblem } from '../api/errors.ts';
import { refusal } from '../api/session-end.ts';

export interface ToSend {
  readonly house: string;
  readonly file: File;
  readonly progress: (sent: number) => void;
  /** Whether it would still go out in the name of whoever chose it. */
  readonly mayGo: () => boolean;
}

/** The browser cannot read the file (any more). */
export class UnreadableFileError extends Error {
  override readonly name = 'UnreadableFileError';
}

/** Somebody else, or nobody, is signed in now. */
export class NotTheirsError extends Error {
  override readonly name = 'NotTheirsError';
}

/**
 * Sends one file, unless the house has its content already. By XMLHttpRequest, since fetch does not tell
 * how much of a body has left. Throws ProblemError where the request as a whole was refused, OfflineError
 * where no answer came.
 */
export async function sendPhoto(toSend: ToSend): Promise<UploadOutcome> {
  try {
    return await sendNow(toSend);
  } catch (error) {
    // A page that is being left sees its requests fail first: no other may start in its last moment.
    if (error instanceof OfflineError) await new Promise((done) => setTimeout(done, LAST_MOMENT_MS));
    throw error;
  }
}

const LAST_MOMENT_MS = 300;

async function sendNow({ house, file, progress, mayGo }: ToSend): Promise<UploadOutcome> {
  const sha256 = await readHash(file);
  if (sha256 !== null) {
    const { photo } = await call('findPhoto', { params: { house }, query: { sha256 } });
    if (photo) return { outcome: 'already-here', fileName: file.name, photo };
  }
  if (!mayGo()) throw new NotTheirsError('Somebody else is signed in.');
  const { status, responseText } = await post(addressOf('addPhotos', { house }), file, progress);
  return readOutcome(status, responseText);
}

/** Null where the browser cannot hash, as on a plain-http origin; throws where it cannot read. */
async function readHash(file: File): Promise<string | null> {
  const canHash = isSecureContext;
  let bytes: ArrayBuffer;
  try {
    bytes = await (canHash ? file : file.slice(0, 1)).arrayBuffer();
  } catch (cause) {
    throw new UnreadableFileError(`${file.name} cannot be read.`, { cause });
  }
  if (!canHash) return null;
  const hash = await crypto.subtle.digest('SHA-256', bytes);
  return [...new Uint8Array(hash)].map((b) => b.toString(16).padStart(2, '0')).join('');
}

function post(address: string, file: File, progress: (sent: number) => void): Promise<XMLHttpRequest> {
  return new Promise((resolve, reject) => {
    const request = new XMLHttpRequest();
    request.open('POST', address);
    request.setRequestHeader('accept', 'application/json, application/problem+json');
    request.upload.onprogress = ({ loaded }) => progress(loaded);
    request.onload = () => resolve(request);
    request.onerror = () => reject(new OfflineError('The server did not answer.'));
    request.ontimeout = request.onerror;
    const form = new FormData();
    form.append('photos', file, file.name);
    request.send(form);
  });
}

/** Exported for its tests: `text` is the answer to one file. */
export function readOutcome(status: number, text: string): UploadOutcome {
  const answer = parse(text);
  if (status !== 201) throw refusal(status, answer);
  const [outcome] = (answer as { results?: UploadOutcome[] } | undefined)?.results ?? [];
  if (!outcome) throw new ProblemError(unexplainedProblem(500));
  return outcome;
}

function parse(text: string): unknown {
  try {
    return JSON.parse(text);
  } catch {
    return undefined;
  }
}
