/** Page margin boxes with these words (CSS Paged Media, level 3, section 4.2). */
export function marginRule(left: string, right: string): string {
  return `@page { @top-left { content: ${cssString(left)}; } @top-right { content: ${cssString(right)}; } }`;
}

/** A string of CSS (CSS Syntax, level 3, 4.3.5): all that could end it, or the element around it, by code point. */
export function cssString(text: string): string {
  const escaped = text.replace(/["\\<>\p{Cc}]/gu, (char) => `\\${char.codePointAt(0)?.toString(16)} `);
  return `"${escaped}"`;
}
