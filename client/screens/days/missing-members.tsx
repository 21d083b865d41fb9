import { Link } from 'react-router';
import type { MissingLineView } from '#domain/contract/journal-views';
import { useWords } from '../../i18n/use-words.ts';
import { KindName } from '../../parts/kind-name.tsx';
import { StageName } from '../../parts/stage-name.tsx';
import { useHouse } from '../../shell/use-house.ts';
import { groupMissing, type MissingRow } from './group-missing.ts';

export interface MissingMembersProps {
  lines: readonly MissingLineView[];
  /** Lines whose kind is shown here for the first time. */
  withReading: ReadonlySet<MissingLineView>;
}

/** What somebody goes out to photograph: place by place the marks, large, each leading to its member. */
export function MissingMembers({ lines, withReading }: MissingMembersProps) {
  const { t } = useWords();
  const places = groupMissing(lines);
  const isOnePlace = places.length === 1 && places[0]?.place === '';
  return (
    <div className="missing">
      {places.map(({ place, rows }) => (
        <section key={place}>
          {isOnePlace ? null : <h4>{place === '' ? t('days.noPlace') : place}</h4>}
          {rows.map((row) => (
            <Row key={`${row.least} ${row.reason}`} row={row} withReading={withReading} />
          ))}
        </section>
      ))}
    </div>
  );
}

function Row({ row, withReading }: { row: MissingRow; withReading: MissingMembersProps['withReading'] }) {
  const { t } = useWords();
  const { id: house } = useHouse();
  return (
    <div className="missing-row">
      <p className="missing-why">
        <StageName stage={row.least} />
        <span>{t(`report.short.${row.reason}`)}</span>
      </p>
      <ul className="plain-list missing-marks">
        {row.lines.map((line) => (
          <li key={line.mark}>
            <Link to={`/houses/${house}/members/${encodeURIComponent(line.mark)}`}>
              <strong>{line.mark}</strong>{' '}
              <span className="missing-kind">
                <KindName kind={line.kind} hasReading={withReading.has(line)} />
              </span>
              {line.liesUnder ? <span className="missing-kind"> {t('days.liesUnder')}</span> : null}
            </Link>
          </li>
        ))}
      </ul>
    </div>
  );
}
