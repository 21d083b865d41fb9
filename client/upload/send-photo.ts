import type { UploadOutcome } from '#domain/contract/views';
import { addressOf } from '../api/address.ts';
import { OfflineError, ProblemError, isProblem, unexplainedProblem } from '../api/errors.ts';

/**
 * Sends one file. By XMLHttpRequest, since fetch does not tell how much of a body has left.
 * Throws ProblemError where the request as a whole was refused, OfflineError where no answer came.
 */
export function sendPhoto(
  house: string,
  file: File,
  progress: (sent: number) => void,
): Promise<UploadOutcome> {
  return new Promise((resolve, reject) => {
    const request = new XMLHttpRequest();
    request.open('POST', addressOf('addPhotos', { house }));
    request.setRequestHeader('accept', 'application/json, application/problem+json');
    request.upload.onprogress = ({ loaded }) => progress(loaded);
    request.onload = () => {
      try {
        resolve(readOutcome(request.status, request.responseText));
      } catch (error) {
        reject(error);
      }
    };
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
  if (status !== 201) throw new ProblemError(isProblem(answer) ? answer : unexplainedProblem(status));
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
