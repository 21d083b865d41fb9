import { Link } from 'react-router';
import type { CoveringView } from '#domain/contract/views';
import { formatInstant } from '../../i18n/format.ts';
import { joinWords } from '../../i18n/join-words.ts';
import { useWords } from '../../i18n/use-words.ts';
import { useHouse } from '../../shell/use-house.ts';
import { useReport } from '../report/use-report.ts';
import { findCovering } from './closing-preview.ts';
import { DaysLeft } from './days-left.tsx';
import { LAYER_WORDS } from './layer-words.ts';
import { useCoverings } from './use-coverings.ts';

/** The other layers at the same place, in the order of their days, each with how it stands. */
export function LayerList({ covering }: { covering: CoveringView }) {
  const { t, lang } = useWords();
  const { id: house, zone } = useHouse();
  const report = useReport(house).data;
  const zones = new Map(useCoverings(house).data?.coverings.map((one) => [one.id, one.zone]));
  const layers = (findCovering(report, covering.id)?.layers ?? []).flatMap(
    (id) => findCovering(report, id) ?? [],
  );
  const words = LAYER_WORDS[lang];
  const faceOf = (id: string) => {
    const there = zones.get(id);
    return there?.shape === 'wall' && there.face !== 'both' ? words.face[there.face] : null;
  };
  if (layers.length === 0) return null;
  return (
    <section className="section">
      <h2>{words.others}</h2>
      <ul className="plain-list">
        {layers.map(({ id, name, kind, closedAt, daysLeft }) => (
          <li key={id} className="row">
            <Link className="alone" to={`/houses/${house}/coverings/${id}`}>
              {name}
            </Link>
            <span className="soft">{joinWords([t(`common.coveringKind.${kind}`), faceOf(id)], lang)}</span>
            {closedAt === null ? (
              <DaysLeft days={daysLeft} />
            ) : (
              <span>{t('coverings.closedOn', { when: formatInstant(closedAt, zone, lang) })}</span>
            )}
          </li>
        ))}
      </ul>
    </section>
  );
}
