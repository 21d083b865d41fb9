import type { ErrorRequestHandler, RequestHandler, Response } from 'express';
import type { Logger } from 'pino';
import { PROBLEMS, type Problem, type ProblemCode } from '#domain/contract/problems';
import { isSheetRefusal, sheetRefusalText } from '#domain/frame/sheet-refusal';
import { Failure } from '../services/failure.ts';
import { hurry } from './hurry.ts';
import { PROBLEM_SENTENCES } from './problem-sentences.ts';
import { withoutSecrets } from './without-secrets.ts';

/** Long enough for a browser that sends a photo to see the answer. */
const REST_OF_REFUSED_MS = 60_000;

/** A failure as an RFC 9457 problem document. */
export function toProblem({ code, params, errors }: Failure): Problem {
  const [title, sentence] = PROBLEM_SENTENCES[code];
  const detail =
    code === 'schedule-unreadable' && isSheetRefusal(params['reason'])
      ? sheetRefusalText({ ...params, reason: params['reason'] }, 'en')
      : sentence.replace(/\{(\w+)\}/g, (_, name: string) => String(params[name] ?? '…'));
  return {
    type: `urn:arakabe:problem:${code}`,
    title,
    status: PROBLEMS[code],
    detail,
    code,
    params,
    ...(errors && { errors }),
  };
}

export const notFound: RequestHandler = () => {
  throw new Failure('not-found', { what: 'address' });
};

/** The only place where errors become answers. What is not a Failure is a defect: logged whole, answered blankly. */
export function problemHandler(log: Logger): ErrorRequestHandler {
  return (error: unknown, req, res, next) => {
    const failure = toFailure(error);
    if (PROBLEMS[failure.code] >= 500)
      log.error({ err: error, method: req.method, path: withoutSecrets(req.path) }, 'request failed');
    if (res.headersSent) return next(error);
    sendProblem(res, failure);
    // Of a body that nobody reads the rest need not come.
    hurry(req, REST_OF_REFUSED_MS);
  };
}

export function sendProblem(res: Response, failure: Failure): void {
  const problem = toProblem(failure);
  res.status(problem.status).type('application/problem+json').send(JSON.stringify(problem));
}

/** Errors of the libraries underneath that a client can cause. */
export function toFailure(error: unknown): Failure {
  if (error instanceof Failure) return error;
  const { code, type, status } = error as { code?: unknown; type?: unknown; status?: unknown };
  if (code === 'ENOSPC' || code === 'EDQUOT' || code === '53100') return new Failure('storage-full');
  // A text with U+0000, which PostgreSQL cannot hold (its error 22021, character_not_in_repertoire).
  if (code === '22021') return new Failure('invalid-request');
  if (type === 'entity.parse.failed') return new Failure('invalid-json');
  if (type === 'entity.too.large') return new Failure('request-too-large');
  if (type === 'encoding.unsupported' || type === 'charset.unsupported')
    return new Failure('unsupported-media-type', { found: 'this encoding' });
  if (typeof code === 'string' && code.startsWith('LIMIT_')) return uploadLimit(code);
  if (status === 400) return new Failure('invalid-request');
  // Of files: what is not there, and what lies outside of their folder.
  if (status === 403 || status === 404) return new Failure('not-found', { what: 'address' });
  return new Failure('internal-error');
}

function uploadLimit(code: string): Failure {
  const failure: ProblemCode = code === 'LIMIT_UNEXPECTED_FILE' ? 'no-photo-in-request' : 'request-too-large';
  return new Failure(failure);
}
