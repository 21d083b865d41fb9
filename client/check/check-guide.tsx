import { useId, type ReactNode } from 'react';
import type { Paper } from '#domain/verify/check-paper';
import type { Words } from '../i18n/words.ts';

export interface CheckGuideProps {
  t: Words;
  /** As the code gives it. */
  paper: Paper;
  /** What the server from which this page comes offers besides. */
  onServer?: ReactNode;
}

/** For somebody with a release sheet in hand and no archive: what can be told from it, and whom to ask for more. */
export function CheckGuide({ t, paper, onServer }: CheckGuideProps) {
  const id = useId();
  return (
    <div className="check-guide">
      <section aria-labelledby={`${id}-alone`}>
        <h2 id={`${id}-alone`}>{t('check.guide.alone')}</h2>
        <p>{t('check.guide.compare')}</p>
        <CodeValues {...{ t, paper }} />
        <ul>
          <li>{t('check.guide.differ')}</li>
          <li>{t('check.guide.agree')}</li>
        </ul>
      </section>
      <section aria-labelledby={`${id}-record`}>
        <h2 id={`${id}-record`}>{t('check.guide.record')}</h2>
        <ol>
          <li>{t('check.guide.ask')}</li>
          <li>{t('check.guide.choose')}</li>
          <li>{t('check.guide.read')}</li>
        </ol>
      </section>
      {onServer}
    </div>
  );
}

/** Under the names that the sheet gives them, in its order. */
function CodeValues({ t, paper: { release, size, head } }: { t: Words; paper: Paper }) {
  const values: [string, string][] = [
    ...(release === null ? [] : [[t('check.guide.number'), release] satisfies [string, string]]),
    [t('check.guide.entry'), t('check.guide.entryNo', { number: size })],
    [t('check.guide.head'), head],
  ];
  return (
    <dl className="facts">
      {values.map(([name, value]) => (
        <div key={name} className="facts-row">
          <dt>{name}</dt>
          <dd className="hash">{value}</dd>
        </div>
      ))}
    </dl>
  );
}
