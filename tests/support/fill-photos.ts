import { createHash } from 'node:crypto';
import type pg from 'pg';
import type { Capture } from '#domain/contract/capture';
import type { Person } from '#domain/contract/shapes';
import { LEGIBILITY_VERSION } from '#domain/photo/legibility';
import type { Stage } from '#domain/frame/stage';
import { someReadings } from './some-readings.ts';

export interface FilledPhoto {
  readonly id: string;
  readonly sha256: string;
  readonly day: string | null;
  readonly instant: string | null;
  readonly by: Person | null;
  readonly tags: readonly FilledTag[];
}

export interface FilledTag {
  readonly mark: string;
  readonly stage: Stage;
  readonly state: 'standing' | 'superseded' | 'withdrawn';
}

/** A UUID and a content hash that follow from a name, so that a house can be filled again in the same way. */
export function namedIds(name: string): { id: string; sha256: string } {
  const sha256 = createHash('sha256').update(name).digest('hex');
  return { id: sha256.replace(/^(.{8})(.{4}).(.{3}).(.{3})(.{12}).*$/, '$1-$2-4$3-8$4-$5'), sha256 };
}

const FILLS = [
  `insert into photo (id, house_id, sha256, bytes, media_type, file_name, width, height, readings, added_at,
     added_by, capture, captured_at, capture_day)
   select id, $1, sha256, 1000, 'image/jpeg', "fileName", 400, 300, readings, now(), by, capture, instant, day
   from jsonb_to_recordset($2::jsonb -> 'photos') as p(id uuid, sha256 text, "fileName" text, readings jsonb,
     by jsonb, capture jsonb, instant timestamptz, day date)`,
  // With traits, and below with measures, so that the server finds nothing to make up for at its start.
  `insert into picture (photo_id, state, hash, sharpness)
   select (p ->> 'id')::uuid, 'ready', ('x' || substr(md5(p ->> 'id'), 1, 16))::bit(64), 100
   from jsonb_array_elements($2::jsonb -> 'photos') as p where $1::uuid is not null`,
  `insert into tag (id, house_id, photo_id, mark, stage, region, note, said_at, state)
   select gen_random_uuid(), $1, photo, mark, stage, '{"shape": "rectangle", "x": 0.2, "y": 0.2, "w": 0.3, "h": 0.3}', '', now(), state
   from jsonb_to_recordset($2::jsonb -> 'tags') as t(photo uuid, mark text, stage text, state text)`,
  `insert into legibility (tag_id, house_id, reasons, version)
   select id, house_id, '["not-measured"]', ${LEGIBILITY_VERSION} from tag where house_id = $1 and $2::jsonb is not null
   on conflict do nothing`,
];

/** Straight into the tables that lists are read from: to add thousands one by one would take for ever. */
export async function fillPhotos(
  pool: pg.Pool,
  house: string,
  photos: readonly FilledPhoto[],
): Promise<void> {
  const rows = photos.map(({ tags: _, ...photo }, i) => ({
    ...photo,
    fileName: `${String(i).padStart(5, '0')}.jpg`,
    // About as much as a phone writes.
    readings: someReadings({ make: 'Test', model: 'Bars', lens: 'x'.repeat(120) }),
    capture: captureOf(photo),
  }));
  const tags = photos.flatMap(({ id, tags: said }) => said.map((tag) => ({ photo: id, ...tag })));
  for (const text of FILLS) await pool.query(text, [house, JSON.stringify({ photos: rows, tags })]);
  if (photos.length > 1000) await pool.query('analyze');
}

function captureOf({ day, instant }: Pick<FilledPhoto, 'day' | 'instant'>): Capture {
  if (day === null || instant === null) return { state: 'undated', rejected: [] };
  const source = 'own-offset';
  return {
    state: 'dated',
    instant,
    day,
    offsetMinutes: 0,
    source,
    uncertaintyS: 1,
    flags: [],
    rejected: [],
    correction: null,
    byHand: null,
  };
}
