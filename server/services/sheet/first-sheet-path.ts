import { attribute } from './xml-attribute.ts';

const SHEET = /<(?:[\w.-]+:)?sheet\s([^<>]*)>/u;
const RELATION = /<(?:[\w.-]+:)?Relationship\s([^<>]*)>/gu;

/** Where the first sheet of a workbook lies in its archive (ECMA-376 Part 1, 18.2.19 and Part 2, 9.3), or null. */
export function firstSheetPath(workbook: string, relations: string): string | null {
  const sheet = SHEET.exec(workbook)?.[1] ?? '';
  const id = attribute(sheet, 'id');
  if (id === null) return null;
  for (const [, attributes = ''] of relations.matchAll(RELATION)) {
    if (attribute(attributes, 'Id') !== id) continue;
    const target = attribute(attributes, 'Target') ?? '';
    return target.startsWith('/') ? target.slice(1) : `xl/${target}`;
  }
  return null;
}
