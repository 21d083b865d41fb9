import express from 'express';
import { z } from 'zod';
import { parseMark, type Mark } from '#domain/frame/mark';
import type { Query } from '#domain/contract/routes';
import { SCHEDULE_FIELDS } from '#domain/contract/schedule-views';
import type { Context } from '../../services/context.ts';
import { Failure } from '../../services/failure.ts';
import { importSchedule, previewSchedule, type ImportChoices } from '../../services/import-schedule.ts';
import { deleteMember, listMembers, putMember, readMemberHistory } from '../../services/members.ts';
import type { Asked, Handlers } from '../implement.ts';

const SHEET_LIMIT = '10mb';
const Mapping = z.record(z.string().regex(/^\d{1,3}$/), z.union([z.enum(SCHEDULE_FIELDS), z.literal('')]));

export function memberHandlers(context: Context): Handlers {
  return {
    importSchedule: async (asked) => {
      const file = {
        bytes: await readBody(asked),
        contentType: asked.req.get('content-type') ?? '',
        fileName: asked.query.fileName,
      };
      const choices = choicesOf(asked.query);
      return asked.query.preview === '1'
        ? previewSchedule(context, asked.house, file, choices)
        : importSchedule(context, asked.account, asked.house, file, choices);
    },
    listMembers: async ({ house }) => ({ members: await listMembers(context, house) }),
    readMember: ({ house, params }) => readMemberHistory(context, house, markOf(params.mark)),
    putMember: ({ account, house, params, body }) =>
      putMember(context, account, house, { mark: markOf(params.mark), ...body }),
    deleteMember: async ({ account, house, params }) => ({
      outcome: await deleteMember(context, account, house, markOf(params.mark)),
    }),
  };
}

/** The kind of file is decided by its content; the announced type only has to be a file's. */
async function readBody({ req, res }: Asked<'importSchedule'>): Promise<Uint8Array> {
  if (req.is('multipart/*') || req.is('application/json'))
    throw new Failure('unsupported-media-type', { found: req.get('content-type') ?? '' });
  await new Promise<void>((resolve, reject) =>
    express.raw({ type: () => true, limit: SHEET_LIMIT })(req, res, (error: unknown) =>
      error instanceof Error ? reject(error) : resolve(),
    ),
  );
  const body: unknown = req.body;
  if (!(body instanceof Uint8Array) || body.length === 0)
    throw new Failure('schedule-unreadable', { reason: 'empty' });
  return body;
}

function choicesOf({ mapping, missing, badRows, agree }: Query<'importSchedule'>): ImportChoices {
  return { mapping: parseMapping(mapping), missing, badRows, agree };
}

function parseMapping(text: string | undefined): ImportChoices['mapping'] {
  if (text === undefined || text === '') return {};
  const parsed = Mapping.safeParse(safeJson(text));
  if (!parsed.success)
    throw new Failure('invalid-request', {}, [
      { path: 'query.mapping', message: 'JSON of column index to field.' },
    ]);
  return Object.fromEntries(Object.entries(parsed.data).map(([index, field]) => [Number(index), field]));
}

function safeJson(text: string): unknown {
  try {
    return JSON.parse(text);
  } catch {
    return undefined;
  }
}

function markOf(text: string): Mark {
  const parsed = parseMark(text);
  if (!parsed.ok) throw new Failure('not-found', { what: 'member', mark: text.slice(0, 60) });
  return parsed.mark;
}
