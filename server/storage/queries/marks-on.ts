import type { Db } from '../open-database.ts';

/** Of all tags that were ever placed on a photo, ended ones too. */
export function marksOn(db: Db, photo: string) {
  return db.selectFrom('tag').where('tag.photoId', '=', photo).select('tag.mark');
}
