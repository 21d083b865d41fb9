import type { ProblemCode } from '#domain/contract/problems';

export type FailureParams = Record<string, string | number>;

/** What a person did cannot be done, for a reason of the closed set. Everything else that is thrown is a defect. */
export class Failure extends Error {
  constructor(
    readonly code: ProblemCode,
    readonly params: FailureParams = {},
    readonly errors?: { path: string; message: string }[],
  ) {
    super(code);
  }
}
