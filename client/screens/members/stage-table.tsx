import type { MemberHistoryView } from '#domain/contract/views';
import { formatInstant } from '../../i18n/format.ts';
import { useWords } from '../../i18n/use-words.ts';
import { StageName } from '../../parts/stage-name.tsx';
import { Table } from '../../parts/table.tsx';
import { useHouse } from '../../shell/use-house.ts';
import { BoundLinks } from './bound-links.tsx';
import { stageIntervalWords } from './stage-interval-words.ts';

export function StageTable({ stages }: { stages: MemberHistoryView['stages'] }) {
  const { t, lang } = useWords();
  const { zone } = useHouse();
  const headings = [t('members.history.stage'), t('members.history.known')];
  return (
    <Table label={t('members.history.stages')} hideLabel headings={headings}>
      {stages.map((interval) => (
        <tr key={interval.stage}>
          <th scope="row">
            <StageName stage={interval.stage} />
          </th>
          <td>
            <p>{stageIntervalWords(t, interval, (instant) => formatInstant(instant, zone, lang))}</p>
            <BoundLinks interval={interval} />
            {interval.contradicted ? <p className="act-text">{t('members.history.contradicted')}</p> : null}
          </td>
        </tr>
      ))}
    </Table>
  );
}
