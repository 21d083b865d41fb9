import type { ClosingReportInput } from '#domain/record/closing-report';
import type { DatabaseConfig } from '../../server/config.ts';
import { openDatabase } from '../../server/storage/open-database.ts';

const FILLS = [
  `insert into member (house_id, mark, kind, name, place, note, other, retired)
   select $1, mark, kind, '', place, '', '{}', retired
   from jsonb_to_recordset($2::jsonb -> 'members') as m(mark text, kind text, place text, retired boolean)`,
  `insert into covering (id, house_id, name, kind, planned_day, note, changed_at, closed_at)
   select id, $1, name, kind, "plannedDay", '', now(), "closedAt" from jsonb_to_recordset($2::jsonb -> 'coverings')
   as c(id uuid, name text, kind text, "plannedDay" date, "closedAt" timestamptz)`,
  `insert into covering_hides (covering_id, house_id, mark, least, position)
   select (c ->> 'id')::uuid, $1, h.value ->> 'mark', h.value ->> 'least', h.ordinality
   from jsonb_array_elements($2::jsonb -> 'coverings') as c, jsonb_array_elements(c -> 'hides') with ordinality as h`,
  `insert into photo (id, house_id, sha256, bytes, media_type, file_name, width, height, readings, added_at, capture, captured_at, capture_day)
   select photo, $1, photo::text, 1000, 'image/jpeg', 'a.jpg', 400, 300, '{}', now(), '{}', instant, (instant at time zone 'Asia/Tokyo')::date
   from jsonb_to_recordset($2::jsonb -> 'tags') as t(photo uuid, instant timestamptz)`,
  `insert into tag (id, house_id, photo_id, mark, stage, region, note, said_at, state)
   select id, $1, photo, mark, stage, '{}', '', now(), 'standing'
   from jsonb_to_recordset($2::jsonb -> 'tags') as t(id uuid, photo uuid, mark text, stage text)`,
  // So that the server starts with every picture made and none to make.
  `insert into picture (photo_id, state) select id, 'ready' from photo where house_id = $1 and $2 <> ''
   on conflict do nothing`,
];

/** Straight into the tables that the report reads: to say 100,000 tags one by one would take the whole bench. */
export async function fillHouse(
  config: DatabaseConfig,
  house: string,
  input: ClosingReportInput,
): Promise<void> {
  const database = await openDatabase(config);
  try {
    for (const text of FILLS) await database.pool.query(text, [house, JSON.stringify(input)]);
    await database.pool.query('analyze');
  } finally {
    await database.close();
  }
}
