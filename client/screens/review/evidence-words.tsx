import { Link } from 'react-router';
import type { ReviewLineView } from '#domain/contract/review-views';
import { formatInstant } from '../../i18n/format.ts';
import { useWords } from '../../i18n/use-words.ts';
import { Button } from '../../parts/button.tsx';
import { LegibilityMark } from '../../parts/legibility-mark.tsx';
import { StageName } from '../../parts/stage-name.tsx';
import { useHouse } from '../../shell/use-house.ts';
import { DoubtWords } from '../bench/doubt-words.tsx';
import { knownTime } from '../report/known-time.ts';
import { RecordFindings } from '../report/record-findings.tsx';
import type { Shown } from './evidence-of.ts';
import { isDoubtAnswered, isDoubted } from './doubted-here.ts';

interface EvidenceWordsProps {
  shown: Shown;
  line: ReviewLineView;
  onDoubt: ((tag: string) => void) | null;
}

/** All that is known of one record. */
export function EvidenceWords({ shown, line, onDoubt }: EvidenceWordsProps) {
  const { t, lang } = useWords();
  const { id: house, zone } = useHouse();
  const { tag, told, fileName } = shown;
  const counts = line.records.some((record) => record.tag === tag.id);
  return (
    <div className="review-caption">
      {counts ? null : <span className="act-text">{t('hold.review.nearest')}</span>}
      <StageName stage={tag.stage} />
      <span>{knownTime(t, lang, zone, told)}</span>
      <LegibilityMark legibility={tag.legibility} />
      {tag.stretch ? <span>{t('bench.stretch.shown', tag.stretch)}</span> : null}
      <TaggedBy tag={tag} />
      <RecordFindings findings={isDoubted(shown) ? notDoubts(told) : told.findings} />
      {/* How a doubt was answered, the findings tell. */}
      {isDoubtAnswered(told) ? null : <DoubtWords tag={tag} isAnswered={false} />}
      <span className="row">
        <Link to={`/houses/${house}/photos/${tag.photo}?tag=${tag.id}`}>{fileName}</Link>
        {onDoubt && mayDoubt(shown) ? (
          <Button onPress={() => onDoubt(tag.id)}>{t('hold.doubt.open')}</Button>
        ) : null}
      </span>
    </div>
  );
}

const notDoubts = ({ findings }: Shown['told']) => findings.filter(({ kind }) => kind !== 'disputed');

/** Whoever doubts it is told instead. */
export function mayDoubt(shown: Shown): boolean {
  return shown.tag.state === 'standing' && !isDoubted(shown);
}

function TaggedBy({ tag: { by, at, note } }: Pick<Shown, 'tag'>) {
  const { t, lang } = useWords();
  const { zone } = useHouse();
  const tagged = t('members.history.taggedBy', {
    name: by?.name ?? t('common.nobody'),
    when: formatInstant(at, zone, lang),
  });
  return note === '' ? (
    <span className="soft">{tagged}</span>
  ) : (
    <span>{t('hold.review.taggedWith', { tagged, note })}</span>
  );
}
