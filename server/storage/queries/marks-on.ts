import type { ReportPart } from '../../services/record-store.ts';
import type { Db } from '../open-database.ts';

/** Of all tags that were ever placed on a photo, ended ones too. */
export function marksOn(db: Db, photo: string) {
  return db.selectFrom('tag').where('tag.photoId', '=', photo).select('tag.mark');
}

export function isOfPhoto(part: ReportPart): part is Extract<ReportPart, { photo: string }> {
  return typeof part === 'object' && 'photo' in part;
}
