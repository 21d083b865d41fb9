import { useQuery } from '@tanstack/react-query';
import type { FrameView } from '#domain/contract/frame-views';
import { gridReader } from '#domain/frame/grid-reader';
import { nameStretch } from '#domain/frame/name-stretch';
import type { Zone, ZoneProblem } from '#domain/frame/zone';
import { call } from '../../api/call.ts';
import { keys } from '../../api/keys.ts';
import { stretchWords } from '../../i18n/stretch-words.ts';
import { useWords } from '../../i18n/use-words.ts';
import type { Words } from '../../i18n/words.ts';
import { Checkbox } from '../../parts/checkbox.tsx';
import { KindName } from '../../parts/kind-name.tsx';
import { useLexicon } from '../../shell/use-lexicon.ts';
import { useHouse } from '../../shell/use-house.ts';
import type { CoveringDraft, CoveringEvent } from './covering-draft.ts';
import { previewZone } from './zone-preview.ts';

export interface ZoneHidesProps {
  frame: FrameView;
  draft: CoveringDraft;
  zone: Zone;
  tell: (event: CoveringEvent) => void;
  asksStage: boolean;
}

/** What the zone hides, stretch by stretch; what is unticked stays visible. */
export function ZoneHides({ frame, draft, zone, tell, asksStage }: ZoneHidesProps) {
  const { t, lang } = useWords();
  const { id: house } = useHouse();
  const needs = useQuery({
    queryKey: keys.requirements(house),
    meta: { isAside: true },
    queryFn: ({ signal }) => call('readRequirements', { params: { house }, signal }),
  });
  const listed = new Set(draft.hides.keys());
  const preview = previewZone(
    frame,
    { kind: draft.kind, zone, listed },
    needs.data?.rows ?? [],
    useLexicon(),
  );
  if (!preview.ok)
    return (
      <p role="status" className="act-text">
        {problemWords(t, preview.problem, zone)}
      </p>
    );
  const reader = frame.grid && gridReader(frame.grid);
  return (
    <div className="stack">
      <p role="status">
        {t('coverings.zone.hides', { count: preview.members.length - outOf(preview.members, draft) })}
      </p>
      <ul className="plain-list zone-hides">
        {preview.members.map(({ mark, kind, axis, stretch, least }) => (
          <li key={mark}>
            <Checkbox
              isSelected={!draft.except.has(mark)}
              onChange={(isHidden) => tell({ type: 'leave-out', mark, isOut: !isHidden })}
            >
              <strong>{mark}</strong> <KindName kind={kind} hasReading={false} />
              <span className="soft">
                {stretchWords(t, lang, nameStretch(stretch, axis, reader))}
                {asksStage ? <>, {t('report.least', { stage: t(`common.stage.${least}`) })}</> : null}
              </span>
            </Checkbox>
          </li>
        ))}
      </ul>
    </div>
  );
}

function problemWords(t: Words, { reason, field }: ZoneProblem, zone: Zone): string {
  if (reason === 'unknown-corner') return t('zones.problem.unknown-corner', { said: field });
  if (reason !== 'unknown-line') return t(`zones.problem.${reason}`);
  const name = isLineField(field) ? t(`coverings.zone.field.${field}`) : '';
  const said = isLineField(field) && field in zone ? String(zone[field as keyof Zone]) : '';
  return t('zones.problem.unknown-line', { field: name, said });
}

const LINE_FIELDS = ['line', 'from', 'to', 'eaves', 'ridge'] as const;
const isLineField = (field: string): field is (typeof LINE_FIELDS)[number] =>
  (LINE_FIELDS as readonly string[]).includes(field);

const outOf = (members: readonly { mark: string }[], { except }: CoveringDraft) =>
  members.filter(({ mark }) => except.has(mark)).length;
