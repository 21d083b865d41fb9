import { Link } from 'react-router';
import type { Kind } from '#domain/lexicon/kinds';
import { useMembers } from '../../finding/use-members.ts';
import { useWords } from '../../i18n/use-words.ts';
import { StageStrokes } from '../../parts/stage-strokes.tsx';
import { useHouse } from '../../shell/use-house.ts';
import { useLexicon } from '../../shell/use-lexicon.ts';
import { membersByKind } from './kind-members.ts';

const SHOWN = 40;

/** This house's members of a kind, with the strokes of their stages. */
export function KindMembers({ kind }: { kind: Kind }) {
  const { t } = useWords();
  const { id: house } = useHouse();
  const lexicon = useLexicon();
  const { index, isLoaded } = useMembers(house);
  const byKind = membersByKind(
    index.entries.map(({ member }) => member),
    lexicon,
  );
  const members = byKind.get(kind.id) ?? [];
  if (!isLoaded) return null;
  if (members.length === 0) return <p className="soft">{t('lexicon.membersNone')}</p>;
  const find = new URLSearchParams({ find: kind.kanji || kind.en }).toString();
  return (
    <>
      <ul className="lexicon-members plain-list" aria-label={t('lexicon.members')}>
        {members.slice(0, SHOWN).map(({ mark, stage, track }) => (
          <li key={mark}>
            <StageStrokes stage={stage} track={track} />
            <Link className="alone" to={`/houses/${house}/members/${encodeURIComponent(mark)}`}>
              {mark}
            </Link>
          </li>
        ))}
      </ul>
      {members.length > SHOWN ? (
        <Link className="alone" to={`/houses/${house}/members?${find}`}>
          {t('lexicon.allMembers', { count: members.length })}
        </Link>
      ) : null}
    </>
  );
}
