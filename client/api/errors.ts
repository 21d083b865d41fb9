import type { Problem } from '#domain/contract/problems';

/** The server answered, and the answer is a problem document. */
export class ProblemError extends Error {
  override readonly name = 'ProblemError';
  readonly problem: Problem;

  constructor(problem: Problem) {
    super(problem.detail);
    this.problem = problem;
  }
}

/** No answer came at all: no network, or no server. */
export class OfflineError extends Error {
  override readonly name = 'OfflineError';
}

/** For answers that are not problem documents, e.g. from a proxy in between. */
export function unexplainedProblem(status: number): Problem {
  const code = status === 413 ? 'request-too-large' : status === 429 ? 'too-many-attempts' : 'internal-error';
  return { type: 'about:blank', title: '', status, detail: `HTTP ${status}`, code, params: {} };
}

export function isProblem(value: unknown): value is Problem {
  return (
    typeof value === 'object' && value !== null && 'code' in value && 'status' in value && 'params' in value
  );
}

export function isSignedOut(error: unknown): boolean {
  return error instanceof ProblemError && error.problem.code === 'not-signed-in';
}
