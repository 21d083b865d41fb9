import type { ReactNode } from 'react';
import { TRACKS } from '#domain/frame/stage';
import type { Kind } from '#domain/lexicon/kinds';
import { bareRomaji } from '#domain/lexicon/bare-romaji';
import { formatList } from '../../i18n/format.ts';
import { useWords } from '../../i18n/use-words.ts';
import { StageName } from '../../parts/stage-name.tsx';

export interface TermFactsProps {
  kind: Kind;
  fastened: string | undefined;
  seen: string | undefined;
}

export function TermFacts({ kind, fastened, seen }: TermFactsProps) {
  const { t, lang } = useWords();
  const { kana, romaji, en, also, section, hiddenBy, lies } = kind;
  const reading = [kana, romaji].filter((text) => text !== '');
  // Romaji without its long vowels is no other name.
  const others = also.filter((name) => name !== bareRomaji(romaji));
  const hidden = hiddenBy.map((form) => t(`lexicon.form.${form}`));
  const sectionKey = lies === 'upright' ? 'sectionUpright' : 'sectionLevel';
  const rows: [key: string, value: ReactNode][] = [
    [t('lexicon.facts.reading'), reading.join(lang === 'ja' ? '、' : ', ')],
    [t('lexicon.edit.en'), kind.kanji === '' ? '' : en],
    [t('lexicon.facts.also'), others.join(lang === 'ja' ? '、' : ', ')],
    [t('lexicon.facts.family'), t(`lexicon.family.${kind.family}`)],
    [
      t('lexicon.facts.stages'),
      <span key="stages" className="row">
        {TRACKS[kind.track].map((stage) => (
          <StageName key={stage} stage={stage} track={kind.track} />
        ))}
      </span>,
    ],
    [t('lexicon.facts.lies'), lies === 'none' ? '' : t(`lexicon.lies.${lies}`)],
    [
      t('lexicon.facts.section'),
      section && t(`lexicon.facts.${sectionKey}`, { a: String(section[0]), b: String(section[1]) }),
    ],
    [t('lexicon.facts.fastened'), fastened],
    [
      t('lexicon.facts.hiddenBy'),
      hidden.length === 0 ? t('lexicon.facts.hiddenByNone') : formatList(hidden, lang),
    ],
    [t('lexicon.facts.seen'), seen && <strong key="seen">{seen}</strong>],
  ];
  return (
    <section className="section">
      <h2>{t('lexicon.facts.title')}</h2>
      <dl className="facts lexicon-facts">
        {rows
          .filter(([, value]) => value !== '' && value !== null && value !== undefined)
          .map(([name, value]) => (
            <div key={name} className="facts-row">
              <dt>{name}</dt>
              <dd>{value}</dd>
            </div>
          ))}
      </dl>
    </section>
  );
}
