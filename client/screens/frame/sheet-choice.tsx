import { Link } from 'react-router';
import type { Sheet } from '#domain/frame/drawing/sheet';
import { useWords } from '../../i18n/use-words.ts';
import { countGaps, labelOf } from './frame-model.ts';
import { sheetName } from './sheet-name.ts';

export interface SheetChoiceProps {
  readonly sheets: readonly Sheet[];
  readonly current: Sheet;
  readonly gaps: ReadonlySet<string>;
  readonly to: (sheet: Sheet) => string;
}

/** All drawings in the order of the grid, each with how much is missing in it. */
export function SheetChoice(props: SheetChoiceProps) {
  const { t } = useWords();
  const kinds = ['elevation', 'plan'] as const;
  return (
    <nav className="frame-choice no-print" aria-label={t('frame.sheets')}>
      {kinds.map((kind) => {
        const sheets = props.sheets.filter(({ subject }) => subject.kind === kind);
        return sheets.length === 0 ? null : (
          <div key={kind} className="frame-choice-row">
            <span className="frame-choice-title">{t(`frame.${kind}s`)}</span>
            <ul className="plain-list">
              {sheets.map((sheet) => (
                <li key={sheet.key}>
                  <Choice {...props} sheet={sheet} />
                </li>
              ))}
            </ul>
          </div>
        );
      })}
    </nav>
  );
}

function Choice({ sheet, current, gaps, to }: SheetChoiceProps & { sheet: Sheet }) {
  const { t } = useWords();
  const count = countGaps(sheet, gaps);
  const gapWords = count === 0 ? t('frame.noGaps') : t('frame.gaps', { count });
  return (
    <Link
      to={to(sheet)}
      replace
      preventScrollReset
      className="frame-choice-link"
      aria-current={sheet === current ? 'page' : undefined}
    >
      <span aria-hidden="true">{labelOf(sheet) || t('frame.wholePlan')}</span>
      {count > 0 ? (
        <span className="frame-choice-gaps" aria-hidden="true">
          {count}
        </span>
      ) : null}
      <span className="out-of-sight">
        {sheetName(t, sheet)}, {gapWords}
      </span>
    </Link>
  );
}
