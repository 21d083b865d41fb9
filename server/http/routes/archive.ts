import { readFile } from 'node:fs/promises';
import { Readable } from 'node:stream';
import { pipeline } from 'node:stream/promises';
import type { Response } from 'express';
import type { Logger } from 'pino';
import type { Context } from '../../services/context.ts';
import { archiveSize, exportHouse, type Archive } from '../../services/archive/export-house.ts';
import type { Handlers } from '../implement.ts';

export function archiveHandlers(context: Context, log: Logger, checkPage: string): Handlers {
  return {
    archiveSize: ({ house }) => archiveSize(context, house),
    readArchive: async ({ house, query: { lang }, req, res }) => {
      const spoken = lang ?? (req.acceptsLanguages('en', 'ja') === 'ja' ? 'ja' : 'en');
      const archive = await exportHouse(context, house, spoken, await readFile(checkPage));
      res.setHeader('content-length', archive.bytes);
      res.attachment(archive.fileName).type('application/zip');
      if (req.method === 'HEAD') res.end();
      else await send(archive, res, log);
      return undefined;
    },
  };
}

/** Whoever went away has had enough; on a defect the connection breaks, and what came so far is no archive. */
async function send({ content }: Archive, res: Response, log: Logger): Promise<void> {
  try {
    await pipeline(Readable.from(content, { objectMode: false }), res);
  } catch (err) {
    if ((err as NodeJS.ErrnoException).code !== 'ERR_STREAM_PREMATURE_CLOSE')
      log.error({ err }, 'archive broken off');
  }
}
