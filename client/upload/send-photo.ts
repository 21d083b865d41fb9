import type { UploadOutcome } from '#domain/contract/views';
import { addressOf } from '../api/address.ts';
import { OfflineError, ProblemError, unexplainedProblem } from '../api/errors.ts';
import { refusal } from '../api/session-end.ts';

/**
 * Sends one file. By XMLHttpRequest, since fetch does not tell how much of a body has left.
 * Throws ProblemError where the request as a whole was refused, OfflineError where no answer came.
 */
export async function sendPhoto(
  house: string,
  file: File,
  progress: (sent: number) => void,
): Promise<UploadOutcome> {
  const { status, responseText } = await post(addressOf('addPhotos', { house }), file, progress);
  return readOutcome(status, responseText);
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
