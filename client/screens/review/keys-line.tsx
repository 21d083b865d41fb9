import { useWords } from '../../i18n/use-words.ts';

const LOOKING = ['turn', 'record', 'large', 'end'] as const;
const ANSWERING = ['seen', 'words', 'reason', 'missing', 'lacks', 'doubt', 'open'] as const;

/** What the keys do; not for whoever has none. */
export function KeysLine({ mayAnswer }: { mayAnswer: boolean }) {
  const { t } = useWords();
  return (
    <p className="review-keys soft">
      {[...(mayAnswer ? ANSWERING : []), ...LOOKING].map((key) => (
        <span key={key}>{t(`hold.review.keys.${key}`)}</span>
      ))}
    </p>
  );
}
