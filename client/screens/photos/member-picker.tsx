import { useState } from 'react';
import { parseMark } from '#domain/frame/mark';
import { findMember, searchMembers, type MemberIndex } from '../../finding/member-index.ts';
import { useMembers } from '../../finding/use-members.ts';
import { joinWords } from '../../i18n/join-words.ts';
import { kindLabel } from '../../i18n/kind-label.ts';
import { useLexicon } from '../../shell/use-lexicon.ts';
import { useWords } from '../../i18n/use-words.ts';
import { SearchSelect, type SearchChoice } from '../../parts/search-select.tsx';

const OFFERED = 40;

/**
 * A member by whatever one types of it: mark, kind in any language, name, place. Enter takes the first. Also
 * a mark that the schedule lacks, since tags may name such.
 */
export function MemberPicker({ house, onPick }: { house: string; onPick: (mark: string) => void }) {
  const { t } = useWords();
  const [text, setText] = useState('');
  const { index, isLoaded } = useMembers(house);
  const found = useChoices(index, text);
  // Before the schedule is here every mark would seem to be missing from it.
  const choices = isLoaded ? found : [];
  const pick = (mark: string) => {
    setText('');
    onPick(mark);
  };
  return (
    <div
      onKeyDownCapture={({ key, target, nativeEvent }) => {
        const isPicking = (target as Element).hasAttribute('aria-activedescendant');
        if (key === 'Enter' && !nativeEvent.isComposing && !isPicking && text !== '' && choices[0])
          pick(choices[0].id);
      }}
    >
      <SearchSelect
        label={t('photos.filter.mark')}
        choices={choices}
        value={null}
        onChange={(mark) => (mark === null ? undefined : pick(mark))}
        input={text}
        onInput={setText}
        openLabel={t('common.showList')}
      />
    </div>
  );
}

function useChoices(index: MemberIndex, text: string): SearchChoice[] {
  const { t, lang } = useWords();
  const lexicon = useLexicon();
  const found = searchMembers(index, text)
    .slice(0, OFFERED)
    .map(({ mark, kind, name, place }) => ({
      id: mark,
      label: mark,
      hint: joinWords([kindLabel(kind, lang, lexicon), name, place], lang),
    }));
  const parsed = parseMark(text);
  if (!parsed.ok || findMember(index, text)) return found;
  return [...found, { id: parsed.mark, label: parsed.mark, hint: t('photos.filter.notInSchedule') }];
}
