import type { SheetRefusal } from '#domain/frame/sheet-refusal';
import { MARK_MAX_LENGTH } from '#domain/frame/mark';

/** Readers take the header anywhere in the first 1024 bytes (PDF Reference 1.7, appendix H, note 13). */
const PDF_SEARCHED = 1024;

const OTHER_TEXT: readonly (readonly [RegExp, SheetRefusal])[] = [
  [/^\s*%PDF-\d/mu, 'pdf'],
  [/^\s*\{\\rtf/u, 'text-document'],
  // Also a web archive, which is a mail message around a page (RFC 2557).
  [/^\s*(?:<[a-z!?]|MIME-Version:)|<html[\s>]/iu, 'web-page'],
];

/** What text is that begins like another format, or null. */
export function foreignText(text: string): SheetRefusal | null {
  const start = text.slice(0, PDF_SEARCHED);
  return OTHER_TEXT.find(([sign]) => sign.test(start))?.[1] ?? (isJson(text) ? 'json' : null);
}

function isJson(text: string): boolean {
  if (!/^\s*[[{]/u.test(text)) return false;
  try {
    JSON.parse(text);
    return true;
  } catch {
    return false;
  }
}

/** One column most of whose lines are longer than any mark: paragraphs, not a list. */
export function isRunningText(rows: readonly (readonly string[])[]): boolean {
  const lines = rows.filter((row) => row.some((cell) => cell.trim() !== ''));
  const long = lines.filter(([first = '']) => first.trim().length > MARK_MAX_LENGTH).length;
  return lines.every(({ length }) => length === 1) && long * 2 > lines.length;
}
