import type { FrameView } from '#domain/contract/frame-views';
import type { CoveringKind } from '#domain/contract/shapes';
import { gridReader } from '#domain/frame/grid-reader';
import type { Axis } from '#domain/frame/set-out';
import type { Zone, ZoneProblem } from '#domain/frame/zone';
import { zoneBody } from '#domain/frame/zone-body';
import { kindIn, type Lexicon } from '#domain/lexicon/make-lexicon';
import type { StatedRequirement } from '#domain/record/requirements-of';
import { hiddenByZones, type HiddenByZone } from '#domain/record/zone-hides';

export interface PreviewedMember extends HiddenByZone {
  readonly kind: string;
  readonly axis: Axis;
}

/** What a zone would hide, as the server will work it out, or why it is no space in the grid. */
export function previewZone(
  frame: FrameView,
  covering: { readonly kind: CoveringKind; readonly zone: Zone; readonly listed: ReadonlySet<string> },
  stated: readonly StatedRequirement[],
  lexicon: Lexicon,
): { ok: true; members: PreviewedMember[] } | { ok: false; problem: ZoneProblem } {
  if (frame.grid === null) return { ok: false, problem: { reason: 'unknown-line', field: 'line' } };
  const reader = gridReader(frame.grid);
  const body = zoneBody(covering.zone, reader);
  if (!body.ok) return { ok: false, problem: body.problem };
  const facts = new Map(frame.members.map((member) => [member.mark as string, member]));
  const inSpace = frame.members.flatMap(({ mark, kind, track, axis }) => {
    if (axis === null) return [];
    return [{ mark, kind: kindIn(lexicon, kind) ?? null, track, axis }];
  });
  const zoned = { id: '', kind: covering.kind, zone: covering.zone, except: covering.listed };
  const hidden = hiddenByZones([zoned], inSpace, reader, stated).get('') ?? [];
  const members = hidden.flatMap((one) => {
    const member = facts.get(one.mark);
    return member?.axis ? [{ ...one, kind: member.kind, axis: member.axis }] : [];
  });
  return { ok: true, members };
}
