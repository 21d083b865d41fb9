import { memo, useMemo, type KeyboardEvent } from 'react';
import { Link } from 'react-router';
import type { Sheet } from '#domain/frame/drawing/sheet';
import { firstOfKind } from '../../i18n/kind-label.ts';
import { useLexicon } from '../../shell/use-lexicon.ts';
import { useWords } from '../../i18n/use-words.ts';
import { countGaps, marksIn, type FrameModel } from './frame-model.ts';
import { MemberRow } from './member-row.tsx';
import { sheetName } from './sheet-name.ts';

export interface MemberTreeProps {
  readonly model: FrameModel;
  readonly house: string;
  readonly current: Sheet;
  readonly day: string;
  readonly gaps: ReadonlySet<string>;
  readonly chosen: string | null;
  readonly to: (sheet: Sheet) => string;
  readonly onChoose: (mark: string) => void;
  /** Given, a row takes its member instead of going to it. */
  readonly onTake?: (mark: string) => void;
}

/** The same as the drawings in words: each line, and the members of the one that is shown. */
export const MemberTree = memo(function MemberTree(props: MemberTreeProps) {
  const { t } = useWords();
  return (
    <section className="frame-tree no-print" aria-label={t('frame.tree')}>
      <p className="soft frame-tree-hint">{t('frame.treeHint')}</p>
      <ul className="plain-list">
        {props.model.sheets.map((sheet) => {
          const count = countGaps(sheet, props.gaps);
          return (
            <li key={sheet.key}>
              <Link
                className="alone frame-tree-line"
                to={props.to(sheet)}
                replace
                preventScrollReset
                aria-current={sheet === props.current ? 'page' : undefined}
              >
                {sheetName(t, sheet)}
              </Link>{' '}
              {count > 0 ? <span className="act-text">{t('frame.gaps', { count })}</span> : null}
              {sheet === props.current ? <SheetMembers {...props} sheet={sheet} /> : null}
            </li>
          );
        })}
      </ul>
    </section>
  );
});

/** From so many rows on the browser is spared laying out what is not in sight. */
const LONG = 200;

export type SheetMembersProps = Omit<MemberTreeProps, 'current' | 'gaps' | 'to'> & { readonly sheet: Sheet };

/** What lies in one sheet, row by row. */
export function SheetMembers({ sheet, day, chosen, model, ...props }: SheetMembersProps) {
  const { t } = useWords();
  const lexicon = useLexicon();
  const told = useMemo(() => membersOf(sheet, model), [sheet, model]);
  const first = useMemo(() => firstOfKind(told, lexicon), [told, lexicon]);
  return (
    <ul
      className={`plain-list frame-tree-members${told.length > LONG ? ' frame-tree-long' : ''}`}
      aria-label={t('frame.treeMembers', { sheet: sheetName(t, sheet) })}
      onKeyDown={walk}
    >
      {told.map((member) => (
        <MemberRow
          key={member.mark}
          {...props}
          {...{ model, member, day }}
          isChosen={member.mark === chosen}
          hasReading={first.has(member)}
        />
      ))}
    </ul>
  );
}

function membersOf(sheet: Sheet, model: FrameModel) {
  return marksIn(sheet).flatMap((mark) => model.members.get(mark) ?? []);
}

/** Arrow keys, Home and End go from row to row. */
function walk(event: KeyboardEvent<HTMLUListElement>): void {
  const rows = Array.from(event.currentTarget.querySelectorAll<HTMLElement>('a, button'));
  const at = rows.indexOf(event.target as HTMLElement);
  const to = { ArrowDown: at + 1, ArrowUp: at - 1, Home: 0, End: rows.length - 1 }[event.key];
  if (to === undefined) return;
  event.preventDefault();
  rows[Math.min(rows.length - 1, Math.max(0, to))]?.focus();
}
