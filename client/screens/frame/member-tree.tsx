import type { KeyboardEvent } from 'react';
import { Link } from 'react-router';
import type { Sheet } from '#domain/frame/drawing/sheet';
import { hiddenOn, stageOn } from '#domain/frame/drawing/state-on';
import { firstOfKind } from '../../i18n/kind-label.ts';
import { useLexicon } from '../../shell/use-lexicon.ts';
import { useWords } from '../../i18n/use-words.ts';
import { KindName } from '../../parts/kind-name.tsx';
import { countGaps, toldOf, type FrameModel } from './frame-model.ts';
import { hiddenWords } from './hidden-words.ts';
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
export function MemberTree(props: MemberTreeProps) {
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
}

export type SheetMembersProps = Omit<MemberTreeProps, 'current' | 'gaps' | 'to'> & { readonly sheet: Sheet };

/** What lies in one sheet, row by row. */
export function SheetMembers({ sheet, ...props }: SheetMembersProps) {
  const { t } = useWords();
  const told = toldOf(sheet).flatMap(({ mark }) => props.model.members.get(mark) ?? []);
  const first = firstOfKind(told, useLexicon());
  return (
    <ul
      className="plain-list frame-tree-members"
      aria-label={t('frame.treeMembers', { sheet: sheetName(t, sheet) })}
      onKeyDown={walk}
    >
      {told.map((member) => (
        <Row key={member.mark} {...props} member={member} hasReading={first.has(member)} />
      ))}
    </ul>
  );
}

type RowProps = Omit<SheetMembersProps, 'sheet'> & {
  readonly member: NonNullable<ReturnType<FrameModel['members']['get']>>;
  readonly hasReading: boolean;
};

function Row({ member, hasReading, model, house, day, chosen, onChoose, onTake }: RowProps) {
  const { t, lang } = useWords();
  const { mark } = member;
  const missing = (model.hides.get(mark) ?? []).filter(({ covering, hidden }) =>
    ['gap', 'lost'].includes(hiddenOn(hidden, covering, day)),
  );
  const tell = () => onChoose(mark);
  return (
    <li
      className={mark === chosen ? 'frame-tree-row frame-tree-chosen' : 'frame-tree-row'}
      onPointerEnter={tell}
    >
      {onTake ? (
        <button type="button" className="button button-quiet" onFocus={tell} onClick={() => onTake(mark)}>
          {mark}
        </button>
      ) : (
        <Link className="alone" to={`/houses/${house}/members/${encodeURIComponent(mark)}`} onFocus={tell}>
          {mark}
        </Link>
      )}{' '}
      <span>
        <KindName kind={member.kind} hasReading={hasReading} />{' '}
        <span className="soft">{t(`common.stage.${stageOn(member, day) ?? 'none'}`)}</span>
      </span>
      {missing.map((one) => (
        <span key={one.covering.id} className="act-text frame-tree-missing">
          {hiddenWords(t, lang, model, one, day)}
        </span>
      ))}
    </li>
  );
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
