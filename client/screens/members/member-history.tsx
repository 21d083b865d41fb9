import type { MemberHistoryView, MemberView } from '#domain/contract/views';
import type { LengthUnit } from '#domain/frame/length';
import { useWords } from '../../i18n/use-words.ts';
import { Notice } from '../../parts/notice.tsx';
import { useHouse } from '../../shell/use-house.ts';
import { KindLink } from '../lexicon/kind-link.tsx';
import { FindingsHere } from '../findings/findings-here.tsx';
import { StatementList } from '../ledger/statement-list.tsx';
import { MemberCoverings } from './member-coverings.tsx';
import { memberDraft } from './member-draft.ts';
import { MemberProtections } from './member-protections.tsx';
import { MemberSightings } from './member-sightings.tsx';
import { StageTable } from './stage-table.tsx';

export function MemberHistory({ history }: { history: MemberHistoryView }) {
  const { t } = useWords();
  const newestFirst = history.statements.toSorted((a, b) => b.seq - a.seq);
  return (
    <>
      {history.member.retired ? <Notice>{t('members.retired')}</Notice> : null}
      <MemberFactsList member={history.member} />
      <FindingsHere about={{ mark: history.member.mark }} />
      <section className="section">
        <h2>{t('members.history.stages')}</h2>
        <StageTable stages={history.stages} />
      </section>
      <section className="section">
        <h2>{t('members.history.photos')}</h2>
        <MemberSightings sightings={history.sightings} />
      </section>
      <section className="section">
        <h2>{t('members.history.coverings')}</h2>
        <MemberCoverings coverings={history.coverings} />
      </section>
      {history.protections.length > 0 ? (
        <section className="section">
          <h2>{t('protection.history.title')}</h2>
          <MemberProtections protections={history.protections} />
        </section>
      ) : null}
      <section className="section">
        <h2>{t('members.history.said')}</h2>
        <StatementList entries={newestFirst} label={t('members.history.said')} />
      </section>
    </>
  );
}

/** Where it lies, as the schedule says it. */
const MARKS = ['from', 'to', 'level'] as const;
const LENGTHS = ['base', 'top', 'width', 'depth'] as const;
const SIGN: Readonly<Record<LengthUnit, string>> = { mm: 'mm', shaku: '尺', inch: 'in' };

function MemberFactsList({ member }: { member: MemberView }) {
  const { t } = useWords();
  const { unit } = useHouse();
  const { setOut } = memberDraft(member, unit);
  const rows = [
    [t('members.fields.name'), member.name],
    [t('members.fields.place'), member.place],
    [t('members.fields.track'), t(`common.track.${member.track}`)],
    ...MARKS.map((field) => [t(`schedule.field.${field}`), setOut[field]] as const),
    ...LENGTHS.map((field) => {
      const length = setOut[field];
      return [t(`schedule.field.${field}`), length === '' ? '' : `${length} ${SIGN[unit]}`] as const;
    }),
    [t('members.fields.note'), member.note],
    ...Object.entries(member.other),
  ].filter(([, value]) => value !== '');
  return (
    <section className="section">
      <h2>{t('members.history.facts')}</h2>
      <dl className="facts">
        {member.kind === '' ? null : (
          <div className="facts-row">
            <dt>{t('members.fields.kind')}</dt>
            <dd>
              <KindLink kind={member.kind} />
            </dd>
          </div>
        )}
        {rows.map(([name, value]) => (
          <div key={name} className="facts-row">
            <dt>{name}</dt>
            <dd>{value}</dd>
          </div>
        ))}
      </dl>
    </section>
  );
}
