import type { LegibilityView } from '#domain/contract/legibility-views';
import { LEGIBILITY_VERSION, sharpnessOf } from '#domain/photo/legibility';
import type { Region } from '#domain/photo/region';
import type { Db } from '../open-database.ts';
import type { Row } from '../tables.ts';

type Measured = { [K in 'measures' | 'verdict' | 'reasons']: Row<'legibility'>[K] | null };

/** Of a tag that has not been measured yet: nothing is said. */
export function toLegibilityView({ measures, verdict, reasons }: Measured): LegibilityView {
  return {
    verdict,
    reasons: reasons ?? [],
    acrossPx: measures && measures.acrossPx,
    sharpness: measures && sharpnessOf(measures),
  };
}

/** Tags without a measurement by the present rules; those that no longer stand too, since histories show them. */
const unmeasured = (db: Db) =>
  db
    .selectFrom('tag')
    .leftJoin('legibility', (join) =>
      join.onRef('legibility.tagId', '=', 'tag.id').on('legibility.version', '=', LEGIBILITY_VERSION),
    )
    .where('legibility.tagId', 'is', null);

export async function photosToMeasure(db: Db): Promise<string[]> {
  const rows = await unmeasured(db).select('tag.photoId').distinct().execute();
  return rows.map(({ photoId }) => photoId);
}

export function tagsToMeasure(db: Db, photo: string): Promise<{ tag: string; region: Region }[]> {
  return unmeasured(db)
    .where('tag.photoId', '=', photo)
    .select(['tag.id as tag', 'tag.region'])
    .orderBy('tag.saidAt')
    .execute();
}
