import { Fragment } from 'react';
import { kindIn } from '#domain/lexicon/make-lexicon';
import { nameOfKind } from '../i18n/kind-label.ts';
import { useLexicon } from '../shell/use-lexicon.ts';
import { useWords } from '../i18n/use-words.ts';
import { rubyParts } from './ruby-parts.ts';

export interface KindNameProps {
  kind: string;
  /** Where the kind is first shown on a screen; after that it stands without its reading. */
  hasReading?: boolean;
}

/**
 * A kind of member with its reading over the kanji. Whoever listens hears it once: in Japanese the kanji, whose
 * reading the voice knows, in English the romaji with the gloss.
 */
export function KindName({ kind, hasReading = true }: KindNameProps) {
  const { lang } = useWords();
  const lexicon = useLexicon();
  const known = kindIn(lexicon, kind);
  if (!known) return <span className="kind-name">{kind}</span>;
  // A word of the crew that lacks a reading or a gloss stands as plain text.
  if (!known.kanji || !known.kana || !known.romaji || !known.en)
    return <span className="kind-name">{nameOfKind(known, lang)}</span>;
  const isKana = known.kanji === known.kana;
  if (lang === 'ja' && (isKana || !hasReading)) return <span className="kind-name">{known.kanji}</span>;
  if (!hasReading) {
    return (
      <span className="kind-name">
        <span lang="ja">{known.kanji}</span> {`${known.romaji}, ${known.en}`}
      </span>
    );
  }
  if (lang === 'ja') {
    return (
      <span className="kind-name">
        <ruby>
          {rubyParts(known.kanji, known.kana).map(({ base, reading }, i) => (
            <Fragment key={i}>
              {base}
              <rt aria-hidden="true">{reading}</rt>
            </Fragment>
          ))}
        </ruby>
      </span>
    );
  }
  return (
    <span className="kind-name">
      <ruby lang="ja" aria-hidden="true">
        {known.kanji}
        <rt lang="en">{known.romaji}</rt>
      </ruby>{' '}
      <span className="out-of-sight">{known.romaji}, </span>
      {known.en}
    </span>
  );
}
