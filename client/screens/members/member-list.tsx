import { Link } from 'react-router';
import type { MemberView } from '#domain/contract/views';
import { kindLabel } from '../../i18n/kind-label.ts';
import { useWords } from '../../i18n/use-words.ts';
import { StageStrokes } from '../../parts/stage-strokes.tsx';
import { useHouse } from '../../shell/use-house.ts';

export function MemberList({ members }: { members: readonly MemberView[] }) {
  const { t, lang } = useWords();
  const { id: house } = useHouse();
  return (
    <ul className="member-list plain-list" aria-label={t('members.list')}>
      {members.map((member) => (
        <li key={member.mark}>
          <StageStrokes stage={member.stage} track={member.track} size="large" />
          <Link className="member-mark" to={`/houses/${house}/members/${encodeURIComponent(member.mark)}`}>
            {member.mark}
          </Link>
          <span className="member-kind">{kindLabel(member.kind, lang)}</span>
          <span className="member-where soft">
            {[member.name, member.place].filter(Boolean).map((text) => (
              <span key={text}>{text}</span>
            ))}
          </span>
          <span className="member-state">
            {member.retired ? <em>{t('members.retired')}</em> : null}
            <span>{t('common.count.photos', { count: member.photos })}</span>
          </span>
        </li>
      ))}
    </ul>
  );
}
