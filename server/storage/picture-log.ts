import type { PictureLog } from '../services/make-pictures.ts';
import { announce } from './ledger-store.ts';
import type { Db } from './open-database.ts';

export function pictureLog(db: Db): PictureLog {
  return {
    isMade: async (photo) => {
      const row = await db
        .selectFrom('picture')
        .select('state')
        .where('photoId', '=', photo)
        .executeTakeFirst();
      return row !== undefined;
    },
    made: async (house, photo, state) => {
      await db
        .insertInto('picture')
        .values({ photoId: photo, state })
        .onConflict((c) => c.column('photoId').doUpdateSet({ state }))
        .execute();
      const { made } = await db
        .insertInto('picturesMade')
        .values({ houseId: house, made: 1 })
        .onConflict((c) =>
          c.column('houseId').doUpdateSet((eb) => ({ made: eb('picturesMade.made', '+', 1) })),
        )
        .returning('made')
        .executeTakeFirstOrThrow();
      await announce(db, house, { type: 'pictures', photo, pictures: state, made });
    },
  };
}
