import { z } from 'zod';

/** The closed set of things that can go wrong for a client, with the HTTP status of each. RFC 9457. */
export const PROBLEMS = {
  'invalid-request': 400,
  'invalid-json': 400,
  'not-signed-in': 401,
  'wrong-credentials': 401,
  'cross-site-request': 403,
  'not-permitted': 403,
  'not-found': 404,
  'method-not-allowed': 405,
  'id-used-for-something-else': 409,
  'email-in-use': 409,
  'tag-withdrawn': 409,
  'tag-superseded': 409,
  'covering-closed': 409,
  'covering-not-closed': 409,
  'schedule-changed-since-preview': 409,
  'finding-changed': 409,
  'last-owner': 409,
  'link-used-or-expired': 410,
  'file-too-large': 413,
  'request-too-large': 413,
  'unsupported-media-type': 415,
  'unknown-zone': 422,
  'unknown-marks': 422,
  'stage-outside-track': 422,
  'grid-impossible': 422,
  'zone-without-grid': 422,
  'zone-impossible': 422,
  'unknown-kinds': 422,
  'term-spelling-taken': 409,
  'term-without-name': 422,
  'closing-in-the-future': 422,
  'clock-mark-without-camera': 422,
  'clock-mark-without-time': 422,
  'time-in-the-future': 422,
  'photo-has-a-time': 422,
  'photo-not-dated-by-hand': 409,
  'schedule-unreadable': 422,
  'schedule-has-bad-rows': 422,
  'schedule-has-no-mark-column': 422,
  'no-photo-in-request': 422,
  'photo-empty': 422,
  'photo-not-an-image': 422,
  'photo-type-not-supported': 422,
  'photo-too-many-pixels': 422,
  'photo-damaged': 422,
  'photo-interrupted': 422,
  'picture-not-ready': 404,
  'crop-outside-image': 422,
  'too-many-attempts': 429,
  'internal-error': 500,
  'storage-full': 507,
} as const;
export type ProblemCode = keyof typeof PROBLEMS;
export const PROBLEM_CODES = Object.keys(PROBLEMS) as [ProblemCode, ...ProblemCode[]];

/** RFC 9457. `params` are the plain values that a translated sentence needs. */
export const ProblemShape = z
  .object({
    type: z.string(),
    title: z.string(),
    status: z.number().int(),
    detail: z.string(),
    code: z.enum(PROBLEM_CODES),
    params: z.record(z.string(), z.union([z.string(), z.number()])),
    errors: z.array(z.object({ path: z.string(), message: z.string() })).optional(),
  })
  .meta({ id: 'Problem' });
export type Problem = z.infer<typeof ProblemShape>;
