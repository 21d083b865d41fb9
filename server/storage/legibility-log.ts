import { LEGIBILITY_VERSION, readability } from '#domain/photo/legibility';
import type { LegibilityLog, MeasuredTag } from '../services/measure-legibility.ts';
import { refreshFindingsOf } from './findings/refresh.ts';
import { announce } from './ledger-store.ts';
import type { Db } from './open-database.ts';
import { countMade } from './picture-log.ts';
import { photosToMeasure, tagsToMeasure } from './queries/legibility.ts';

export function legibilityLog(db: Db): LegibilityLog {
  return {
    photosToMeasure: () => photosToMeasure(db),
    tagsToMeasure: (photo) => tagsToMeasure(db, photo),
    measured: async (house, photo, tags) => {
      await db
        .insertInto('legibility')
        .values(tags.map((tag) => rowOf(house, tag)))
        .onConflict((c) =>
          c.column('tagId').doUpdateSet((eb) => ({
            measures: eb.ref('excluded.measures'),
            verdict: eb.ref('excluded.verdict'),
            reasons: eb.ref('excluded.reasons'),
            version: eb.ref('excluded.version'),
          })),
        )
        .execute();
      await refreshFindingsOf(db, house, { photos: [photo] });
      await announce(db, house, { type: 'legibility', photo, made: await countMade(db, house) });
    },
  };
}

function rowOf(house: string, { tag, measures }: MeasuredTag) {
  const { verdict, reasons } = measures
    ? readability(measures)
    : { verdict: null, reasons: ['not-measured'] as const };
  return {
    tagId: tag,
    houseId: house,
    measures: measures && JSON.stringify(measures),
    verdict,
    reasons: JSON.stringify(reasons),
    version: LEGIBILITY_VERSION,
  };
}
