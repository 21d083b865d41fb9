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
import { WholePicture } from './whole-picture.tsx';

interface EvidenceViewProps {
  shown: Shown;
  line: ReviewLineView;
  onDoubt: ((tag: string) => void) | null;
}

/** One record: what the region shows beside the whole picture, and all that is known of it. */
export function EvidenceView({ shown, line, onDoubt }: EvidenceViewProps) {
  const { t, lang } = useWords();
  const { id: house, zone } = useHouse();
  const { tag, told, fileName, crop } = shown;
  const counts = line.records.some((record) => record.tag === tag.id);
  const isAnswered = told.findings.some(({ kind, accepted }) => kind === 'disputed' && accepted !== null);
  const stage = t(`common.stage.${tag.stage}`);
  return (
    <figure className="review-evidence">
      <div className="review-pictures">
        <img src={crop} alt={t('members.history.cropAlt', { mark: tag.mark, file: fileName, stage })} />
        <WholePicture tag={tag} fileName={fileName} />
      </div>
      <figcaption className="review-caption">
        {counts ? null : <span className="act-text">{t('hold.review.nearest')}</span>}
        <StageName stage={tag.stage} />
        <span>{knownTime(t, lang, zone, told)}</span>
        <LegibilityMark legibility={tag.legibility} />
        {tag.stretch ? <span>{t('bench.stretch.shown', tag.stretch)}</span> : null}
        <span className="soft">
          {t('members.history.taggedBy', {
            name: tag.by?.name ?? t('common.nobody'),
            when: formatInstant(tag.at, zone, lang),
          })}
        </span>
        {tag.note === '' ? null : <span>{tag.note}</span>}
        <RecordFindings findings={told.findings} />
        <DoubtWords tag={tag} isAnswered={isAnswered} />
        <span className="row">
          <Link to={`/houses/${house}/photos/${tag.photo}?tag=${tag.id}`}>{fileName}</Link>
          {onDoubt && tag.state === 'standing' ? (
            <Button onPress={() => onDoubt(tag.id)}>{t('hold.doubt.open')}</Button>
          ) : null}
        </span>
      </figcaption>
    </figure>
  );
}
