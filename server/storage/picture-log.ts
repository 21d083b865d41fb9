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
      await announce(db, house, { type: 'pictures', photo, pictures: state });
    },
  };
}
