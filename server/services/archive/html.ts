/** Text of a page, safe wherever it is put. */
export class Html {
  constructor(readonly text: string) {}
}

type Part = Html | string | number | null | readonly Part[];

/** A tagged template: whatever is put in is escaped, unless it is made by `html` itself; null is nothing. */
export function html(texts: TemplateStringsArray, ...parts: readonly Part[]): Html {
  return new Html(texts.map((text, i) => text + (i < parts.length ? show(parts[i] ?? null) : '')).join(''));
}

function show(part: Part): string {
  if (part === null) return '';
  if (part instanceof Html) return part.text;
  if (typeof part === 'object') return part.map(show).join('');
  return String(part).replace(/[&<>"']/g, (sign) => `&#${sign.charCodeAt(0)};`);
}
