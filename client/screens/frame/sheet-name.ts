import type { Sheet } from '#domain/frame/drawing/sheet';
import type { Words } from '../../i18n/words.ts';
import { labelOf } from './frame-model.ts';

/** Elevation い, 2F 伏図. A label that says 通り itself is not told so twice. */
export function sheetName(t: Words, sheet: Sheet): string {
  const label = labelOf(sheet);
  if (sheet.subject.kind === 'elevation') return t('frame.elevation', { line: label.replace(/通り?$/u, '') });
  return label === '' ? t('frame.wholePlan') : t('frame.plan', { level: label });
}
