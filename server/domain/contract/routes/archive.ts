import { z } from 'zod';
import { ArchiveSizeView } from '../views.ts';
import { route, type Route } from './route.ts';

/** All of a house in one file. */
export const ARCHIVE_ROUTES = {
  readArchive: route({
    method: 'GET',
    path: '/houses/{house}/archive',
    summary:
      'Ledger, tables, originals and two pages as one ZIP, as of this moment; its length is known beforehand.',
    access: 'export',
    query: z.object({
      lang: z.enum(['en', 'ja']).optional().meta({
        description: 'The language of index.html; without it the one that the request accepts.',
      }),
    }),
    status: 200,
    produces: ['application/zip'],
  }),
  archiveSize: route({
    method: 'GET',
    path: '/houses/{house}/archive/size',
    summary: 'About how large the archive is going to be.',
    access: 'export',
    status: 200,
    answer: ArchiveSizeView,
  }),
} as const satisfies Record<string, Route>;
