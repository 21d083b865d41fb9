import { parseMark } from '#domain/frame/mark';
import { findMember, meantMember, offeredFor, type MemberIndex } from '../../finding/member-index.ts';
import { kindLabel } from '../../i18n/kind-label.ts';
import { useLexicon } from '../../shell/use-lexicon.ts';
import { useWords } from '../../i18n/use-words.ts';

export interface AboutMarkProps {
  /** As typed. */
  mark: string;
  index: MemberIndex;
  here: ReadonlySet<string>;
  /** It was to be placed once, while the list offered others. */
  isAsked: boolean;
}

/** Says plainly which member is meant, or that the schedule does not have the mark, or has it no longer. */
export function AboutMark({ mark: typed, index, here, isAsked }: AboutMarkProps) {
  const { t, lang } = useWords();
  const lexicon = useLexicon();
  const parsed = parseMark(typed);
  if (!parsed.ok) return null;
  const member = meantMember(index, typed);
  if (member?.retired) return <p className="act-text">{t('bench.form.retired', { mark: member.mark })}</p>;
  if (member) {
    const words = { mark: member.mark, kind: kindLabel(member.kind, lang, lexicon) };
    const meant = findMember(index, typed) ? '' : t('bench.form.meant', words);
    const again = here.has(member.mark) ? t('bench.form.again', words) : '';
    return meant + again === '' ? null : (
      <p role="status">
        {meant} {again}
      </p>
    );
  }
  if (!isAsked && offeredFor(index, parsed.mark).length > 0) return null;
  const words = { mark: parsed.mark };
  return (
    <p role="status" className="act-text">
      {isAsked ? t('bench.form.unknownAsk', words) : t('bench.form.unknown', words)}
    </p>
  );
}
