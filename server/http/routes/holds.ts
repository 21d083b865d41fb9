import type { Context } from '../../services/context.ts';
import {
  disputeTag,
  readyCovering,
  refuseCovering,
  stateReleaseRule,
  withdrawReady,
} from '../../services/holds.ts';
import { readRelease, releaseCovering, withdrawRelease } from '../../services/release.ts';
import { readReview } from '../../services/review.ts';
import type { Handlers } from '../implement.ts';

export function holdHandlers(context: Context): Handlers {
  return {
    stateReleaseRule: ({ account, house, body }) => stateReleaseRule(context, account, house, body),
    readyCovering: ({ account, house, params: { covering }, body }) =>
      readyCovering(context, account, { house, covering }, body.note),
    withdrawReady: ({ account, house, params: { covering }, query }) =>
      withdrawReady(context, account, { house, covering }, query.reason),
    readReview: ({ account, house, params }) => readReview(context, account, house, params.covering),
    releaseCovering: ({ account, house, params: { covering }, body }) =>
      releaseCovering(context, account, { house, covering }, body),
    refuseCovering: ({ account, house, params: { covering }, body }) =>
      refuseCovering(context, account, { house, covering }, body),
    readRelease: ({ params }) => readRelease(context, params.release),
    withdrawRelease: ({ account, house, params: { release }, query }) =>
      withdrawRelease(context, account, { house, release }, query.reason),
    disputeTag: ({ account, house, params, body }) =>
      disputeTag(context, account, house, params.tag, body.reason),
  };
}
