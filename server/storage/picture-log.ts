import { bitsOfHash } from '#domain/photo/alike';
import type { PictureLog } from '../services/make-pictures.ts';
import { refreshFindingsOf } from './findings/refresh.ts';
import { announce } from './ledger-store.ts';
import type { Db } from './open-database.ts';

export function pictureLog(db: Db): PictureLog {
  return {
    find: async (photo) => {
      const row = await db
        .selectFrom('picture')
        .select(['state', 'hash'])
        .where('photoId', '=', photo)
        .executeTakeFirst();
      return row && { state: row.state, hasTraits: row.hash !== null };
    },
    made: async (house, photo, { state, traits }) => {
      const row = {
        state,
        hash: traits && bitsOfHash(traits.hash),
        sharpness: traits && traits.sharpness,
      };
      await db
        .insertInto('picture')
        .values({ photoId: photo, ...row })
        .onConflict((c) => c.column('photoId').doUpdateSet(row))
        .execute();
      if (traits) await refreshFindingsOf(db, house, { pictures: [photo] });
      const made = await countMade(db, house);
      await announce(db, house, { type: 'pictures', photo, pictures: state, made });
    },
  };
}

/** Whoever cannot hear what the machine has made asks whether this has grown. */
export async function countMade(db: Db, house: string): Promise<number> {
  const { made } = await db
    .insertInto('picturesMade')
    .values({ houseId: house, made: 1 })
    .onConflict((c) => c.column('houseId').doUpdateSet((eb) => ({ made: eb('picturesMade.made', '+', 1) })))
    .returning('made')
    .executeTakeFirstOrThrow();
  return made;
}
