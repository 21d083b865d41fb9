import type { Request, Response } from 'express';
import multer from 'multer';
import type { AccountView, UploadOutcome } from '#domain/contract/views';
import type { Context } from '../services/context.ts';
import { Failure } from '../services/failure.ts';
import { cleanName, ingestPhoto } from '../services/ingest-photo.ts';
import { toFailure, toProblem } from './problem.ts';

/** Files in one request. A client with more sends more requests. */
const FILES_AT_ONCE = 500;

type Reported = (error: unknown, fileName: string) => void;

/**
 * Streams every file of a multipart request into the record, one after the other. A file that cannot
 * be taken is refused by itself; the others go on.
 */
export async function receivePhotos(
  context: Context,
  account: AccountView,
  house: string,
  { req, res, defect }: { req: Request; res: Response; defect: Reported },
): Promise<UploadOutcome[]> {
  if (!req.is('multipart/form-data'))
    throw new Failure('unsupported-media-type', {
      found: req.get('content-type') ?? 'a body without a type',
    });
  const outcomes: UploadOutcome[] = [];
  const storage: multer.StorageEngine = {
    _handleFile: (_req, file, done) => {
      const place = outcomes.length;
      outcomes.push(interrupted(cleanName(file.originalname)));
      ingestPhoto(context, account, house, { name: file.originalname, content: file.stream })
        .catch((error: unknown) => {
          // The rest of a refused file must still be read, or the next one never comes.
          file.stream.resume();
          return refused(error, cleanName(file.originalname), defect);
        })
        .then((outcome) => {
          outcomes[place] = 'problem' in outcome ? outcome : { ...outcome, fileName: outcome.photo.fileName };
          done(null);
        }, done);
    },
    _removeFile: (_req, _file, done) => done(null),
  };
  const limits = { files: FILES_AT_ONCE, fields: 20, parts: FILES_AT_ONCE + 20, fieldSize: 10_000 };
  const parse = multer({ storage, limits, defParamCharset: 'utf8' }).array('photos');
  await new Promise<void>((resolve, reject) =>
    parse(req, res, (error: unknown) => (error ? reject(asError(error)) : resolve())),
  );
  if (outcomes.length === 0) throw new Failure('no-photo-in-request');
  return outcomes;
}

function refused(error: unknown, fileName: string, defect: Reported): UploadOutcome {
  const failure = isCutOff(error) ? new Failure('photo-interrupted', { file: fileName }) : toFailure(error);
  if (failure.code === 'internal-error') defect(error, fileName);
  return { outcome: 'refused', fileName, problem: toProblem(failure) };
}

function interrupted(fileName: string): UploadOutcome {
  return {
    outcome: 'refused',
    fileName,
    problem: toProblem(new Failure('photo-interrupted', { file: fileName })),
  };
}

function isCutOff(error: unknown): boolean {
  return ['ERR_STREAM_PREMATURE_CLOSE', 'ECONNRESET', 'ECONNABORTED'].includes(
    String((error as { code?: unknown }).code),
  );
}

function asError(error: unknown): Error {
  return error instanceof Error ? error : new Error(String(error));
}
