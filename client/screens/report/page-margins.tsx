import { marginRule } from './margin-rule.ts';

/** Words in the head margin of every printed page; the page cannot take them from its own content. */
export function PageMargins({ left, right }: { left: string; right: string }) {
  return <style>{marginRule(left, right)}</style>;
}
