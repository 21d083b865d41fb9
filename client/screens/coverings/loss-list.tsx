import { kindLabel } from '../../i18n/kind-label.ts';
import { useLexicon } from '../../shell/use-lexicon.ts';
import { useWords } from '../../i18n/use-words.ts';
import { useHouse } from '../../shell/use-house.ts';
import { joinWords } from '../../i18n/join-words.ts';
import { missSentence } from '../report/miss-sentence.ts';
import type { CoveringLine } from './closing-preview.ts';
import { LAYER_WORDS } from './layer-words.ts';

const SHOWN = 30;

/** What a closing would lose for good, with what is known of each; `left`: so many stay gaps. */
export function LossList({ lines, left }: { lines: readonly CoveringLine[]; left: number }) {
  const { t, lang } = useWords();
  const lexicon = useLexicon();
  const { zone } = useHouse();
  if (lines.length === 0)
    return <p>{left > 0 ? LAYER_WORDS[lang].left(left) : t('coverings.close.noGaps')}</p>;
  return (
    <div
      className="coverings-loss"
      role="group"
      aria-label={t('coverings.close.lose', { count: lines.length })}
    >
      <p className="act-text">{t('coverings.close.lose', { count: lines.length })}</p>
      <ul>
        {lines.slice(0, SHOWN).map((line) => {
          const words = joinWords(
            [kindLabel(line.kind, lang, lexicon), line.place, missSentence(t, lang, zone, line)],
            lang,
          );
          return (
            <li key={line.mark}>
              <strong>{line.mark}</strong> {words}
            </li>
          );
        })}
        {lines.length > SHOWN ? <li>{t('coverings.close.more', { count: lines.length - SHOWN })}</li> : null}
      </ul>
    </div>
  );
}
