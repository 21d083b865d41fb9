import { joinWords } from '../../i18n/join-words.ts';
import { useWords } from '../../i18n/use-words.ts';
import { Notice } from '../../parts/notice.tsx';
import type { BenchTag } from './bench-tags.ts';
import type { Desk } from './desk-state.ts';
import { leftChange } from './left-change.ts';

/** Says at a change that was begun earlier that it is not saved, and what the tag says until it is. */
export function LeftNote({ desk, tag }: { desk: Desk; tag: BenchTag | undefined }) {
  const { t, lang } = useWords();
  const differs = leftChange(desk, tag);
  if (!tag || differs === null) return null;
  const words = joinWords([tag.mark, t(`common.stage.${tag.stage}`), tag.note], lang);
  return <Notice>{t(`bench.form.left.${differs}`, { words })}</Notice>;
}
