import { useQuery } from '@tanstack/react-query';
import { Link } from 'react-router';
import type { WallFiguresView, WallResultView } from '#domain/contract/wall-views';
import type { CoveringView } from '#domain/contract/views';
import { call } from '../../api/call.ts';
import { keys } from '../../api/keys.ts';
import { formatDay } from '../../i18n/format.ts';
import { useWords } from '../../i18n/use-words.ts';
import { QueryState } from '../../parts/query-state.tsx';
import { Table } from '../../parts/table.tsx';
import { useHouse } from '../../shell/use-house.ts';
import { publishedWords, scheduleWords, sourceWords } from './wall-words.ts';

const COLUMNS = ['rule', 'published', 'schedule', 'verdict'] as const;

/** What the schedule says of a wall beside published figures: to be checked by whoever is licensed to. */
export function WallFigures({ covering: { id, name } }: { covering: CoveringView }) {
  const { t } = useWords();
  const { id: house } = useHouse();
  const query = useQuery({
    queryKey: keys.wallFigures(house, id),
    meta: { isAside: true },
    queryFn: ({ signal }) => call('wallFigures', { params: { covering: id }, signal }),
  });
  return (
    <section className="section wall-figures">
      <h2>{t('walls.title')}</h2>
      <p>{t('walls.lead')}</p>
      <QueryState query={query}>{(figures) => <Figures figures={figures} name={name} />}</QueryState>
    </section>
  );
}

function Figures({ figures, name }: { figures: WallFiguresView; name: string }) {
  const { t, lang } = useWords();
  if (!figures.told)
    return figures.because === 'no-wall' ? null : <p>{t(`walls.none.${figures.because}`)}</p>;
  const { until } = figures.ruleSet;
  const [source, ...others] = sourceWords(t, figures.ruleSet);
  return (
    <>
      <Table
        label={t('walls.table', { name })}
        hideLabel
        headings={COLUMNS.map((column) => t(`walls.columns.${column}`))}
        onPhone="blocks"
      >
        {figures.results.map((result) => (
          <FigureRow key={result.rule} result={result} />
        ))}
      </Table>
      <p className="wall-caution">{t('walls.caution')}</p>
      <p className="soft">
        {t('walls.source')} {source}
        {t('walls.stop')} {until === null ? null : t('walls.until', { day: formatDay(until, lang) })}
      </p>
      {others.map((text) => (
        <p key={text} className="soft">
          {text}
        </p>
      ))}
    </>
  );
}

function FigureRow({ result }: { result: WallResultView }) {
  const { t, lang } = useWords();
  const { rule, figure, verdict, because, looked } = result;
  return (
    <tr>
      <th scope="row">{t(`walls.rule.${rule}`)}</th>
      <td data-label={t('walls.columns.published')}>
        {publishedWords(t, lang, result)} <span className="soft">{t(`walls.read.${figure.read}`)}</span>
      </td>
      <td data-label={t('walls.columns.schedule')}>
        {scheduleWords(t, lang, result)}
        {looked.length > 0 ? (
          <span className="soft"> {t('walls.looked', { count: looked.length })}</span>
        ) : null}
      </td>
      <td data-label={t('walls.columns.verdict')}>
        <strong>{t(`walls.verdict.${verdict}`)}</strong>
        {because ? <div>{t(`walls.because.${because}`)}</div> : null}
        <Differing marks={result.differing} />
      </td>
    </tr>
  );
}

/** More than a few are found in the list of what the wall hides. */
const SHOWN = 6;

function Differing({ marks }: { marks: readonly string[] }) {
  const { t } = useWords();
  const { id: house } = useHouse();
  if (marks.length === 0) return null;
  return (
    <div>
      {t('walls.differing')}{' '}
      {marks.slice(0, SHOWN).map((mark) => (
        <Link key={mark} className="line-link" to={`/houses/${house}/members/${encodeURIComponent(mark)}`}>
          {mark}
        </Link>
      ))}
      {marks.length > SHOWN ? ` ${t('walls.more', { count: marks.length - SHOWN })}` : null}
    </div>
  );
}
