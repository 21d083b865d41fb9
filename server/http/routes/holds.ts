import type { Request, Response } from 'express';
import type { Logger } from 'pino';
import type { Context } from '../../services/context.ts';
import {
  disputeTag,
  readyCovering,
  refuseCovering,
  stateReleaseRule,
  withdrawReady,
} from '../../services/holds.ts';
import { readRelease, releaseCovering, withdrawRelease } from '../../services/release.ts';
import { releasePaper } from '../../services/release-paper.ts';
import { readReview } from '../../services/review.ts';
import type { Handlers } from '../implement.ts';

export function holdHandlers(context: Context, log: Logger, origin: string | null): Handlers {
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
    releaseSheet: async ({ params, query, req, res }) => {
      const at = origin ?? originOf(req);
      const { name, write } = await releasePaper(context, params.release, query.lang, at);
      // Express writes the header as RFC 6266 says, with a plain name for old programs.
      res.attachment(name).type('application/pdf');
      await send(res, log, write);
      return undefined;
    },
    withdrawRelease: ({ account, house, params: { release }, query }) =>
      withdrawRelease(context, account, { house, release }, query.reason),
    disputeTag: ({ account, house, params, body }) =>
      disputeTag(context, account, house, params.tag, body.reason),
  };
}

function originOf(req: Request): string {
  return `${req.protocol}://${req.host}`;
}

/** Once a part is on its way, no problem can be told any more: half a file ends as a broken connection. */
async function send(res: Response, log: Logger, write: (to: Response) => Promise<void>): Promise<void> {
  try {
    await write(res);
  } catch (err) {
    if (!res.headersSent) throw err;
    if (!res.closed) log.error({ err }, 'a sheet could not be written to its end');
    res.destroy();
  }
}
