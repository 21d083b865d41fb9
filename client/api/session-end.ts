import { isProblem, ProblemError, unexplainedProblem } from './errors.ts';

/**
 * `here`: as far as this window knows somebody is signed in, or nobody has been yet. `ended`: the server
 * no longer knows them, though they did not ask for it. `other`: in another window of this browser somebody
 * else has signed in. `leaving`: they are signing out on purpose.
 */
export type SessionState = 'here' | 'ended' | 'other' | 'leaving';

export interface SessionEnd {
  readonly subscribe: (listener: () => void) => () => void;
  readonly state: () => SessionState;
  readonly signedIn: () => void;
  /** The server knows them (again). That it is somebody else is said until it has been read. */
  readonly known: () => void;
  readonly change: () => void;
  readonly leave: () => void;
  /** The server has answered that nobody is signed in. Whoever is leaving knows it already. */
  readonly hear: () => void;
}

export function createSessionEnd(): SessionEnd {
  const listeners = new Set<() => void>();
  let state: SessionState = 'here';
  const become = (next: SessionState) => {
    if (next === state) return;
    state = next;
    for (const listener of listeners) listener();
  };
  return {
    subscribe(listener) {
      listeners.add(listener);
      return () => listeners.delete(listener);
    },
    state: () => state,
    signedIn: () => become('here'),
    known: () => become(state === 'other' ? 'other' : 'here'),
    change: () => become('other'),
    leave: () => become('leaving'),
    hear: () => become(state === 'leaving' ? 'leaving' : 'ended'),
  };
}

/** One for the window, as its cookie is. */
export const sessionEnd = createSessionEnd();

/** The error of an answer that is none. Every answer of the API comes through here, so that no 401 is missed. */
export function refusal(status: number, answer: unknown, end: SessionEnd = sessionEnd): ProblemError {
  const problem = isProblem(answer) ? answer : unexplainedProblem(status);
  if (problem.code === 'not-signed-in') end.hear();
  return new ProblemError(problem);
}
