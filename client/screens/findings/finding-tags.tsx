import { Link } from 'react-router';
import type { FindingView } from '#domain/contract/findings';
import { useWords } from '../../i18n/use-words.ts';
import { useHouse } from '../../shell/use-house.ts';

const SHOWN = 6;

/** The tags that a finding is about, each leading to its region; or the members, where no tag is. */
export function FindingTags({ finding: { tags, marks } }: { finding: FindingView }) {
  const { t } = useWords();
  const { id: house } = useHouse();
  if (tags.length === 0) return <FindingMarks marks={marks} />;
  return (
    <ul className="plain-list finding-tags">
      {tags.slice(0, SHOWN).map(({ tag, photo, mark, stage }) => (
        <li key={tag}>
          <Link className="line-link" to={`/houses/${house}/photos/${photo}?tag=${tag}`}>
            {t('findings.tag', { mark, stage: t(`common.stage.${stage}`) })}
          </Link>
        </li>
      ))}
      {tags.length > SHOWN ? (
        <li className="soft">{t('findings.moreTags', { count: tags.length - SHOWN })}</li>
      ) : null}
    </ul>
  );
}

function FindingMarks({ marks }: { marks: readonly string[] }) {
  const { t } = useWords();
  const { id: house } = useHouse();
  if (marks.length === 0) return null;
  return (
    <ul className="plain-list finding-tags">
      {marks.slice(0, 2 * SHOWN).map((mark) => (
        <li key={mark}>
          <Link className="line-link" to={`/houses/${house}/members/${encodeURIComponent(mark)}`}>
            {mark}
          </Link>
        </li>
      ))}
      {marks.length > 2 * SHOWN ? (
        <li className="soft">{t('findings.moreMarks', { count: marks.length - 2 * SHOWN })}</li>
      ) : null}
    </ul>
  );
}
