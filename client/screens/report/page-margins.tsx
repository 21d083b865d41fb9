import { useEffect } from 'react';
import { marginRule } from './margin-rule.ts';

/**
 * Words in the head margin of every printed page; the page cannot take them from its own content. As a sheet
 * of the document, since pages may have no style that stands in them (content security policy).
 */
export function PageMargins({ left, right }: { left: string; right: string }) {
  useEffect(() => {
    const sheet = new CSSStyleSheet();
    sheet.replaceSync(marginRule(left, right));
    document.adoptedStyleSheets = [...document.adoptedStyleSheets, sheet];
    return () => {
      document.adoptedStyleSheets = document.adoptedStyleSheets.filter((other) => other !== sheet);
    };
  }, [left, right]);
  return null;
}
