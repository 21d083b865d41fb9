import { sql, type ExpressionBuilder } from 'kysely';
import type { CoveringKind, MediaType } from '#domain/contract/shapes';
import type { BurstView } from '#domain/contract/legibility-views';
import type { TakenBackView } from '#domain/contract/hold';
import type { CoveringView, MemberView, PhotoView, TagView } from '#domain/contract/views';
import type { Mark } from '#domain/frame/mark';
import { STAGES, type Stage } from '#domain/frame/stage';
import type { Lexicon } from '#domain/lexicon/lexicon';
import { trackOf } from '#domain/lexicon/track-of-kind';
import type { Row, Tables } from '../tables.ts';

/** How rows become views: one function a noun. */

type PhotoRow = Row<'photo'> & { pictures: string | null; tags: number; burst: BurstView | null };

export function toPhotoView(row: PhotoRow): PhotoView {
  return {
    id: row.id,
    house: row.houseId,
    sha256: row.sha256,
    bytes: row.bytes,
    mediaType: row.mediaType as MediaType,
    fileName: row.fileName,
    width: row.width,
    height: row.height,
    readings: row.readings,
    addedAt: row.addedAt.toISOString(),
    addedBy: row.addedBy,
    capture: row.capture,
    place: { ...row.place, device: row.devicePosition },
    pictures: (row.pictures ?? 'pending') as PhotoView['pictures'],
    tags: row.tags,
    alike: { burst: row.burst },
  };
}

export function toTagView(row: Row<'tag'> & { known: boolean; legibility: TagView['legibility'] }): TagView {
  return {
    id: row.id,
    photo: row.photoId,
    mark: row.mark as Mark,
    known: row.known,
    stage: row.stage,
    region: row.region as TagView['region'],
    stretch: row.stretch,
    note: row.note,
    by: row.saidBy,
    at: row.saidAt.toISOString(),
    supersedes: row.supersedes,
    state: row.state,
    ended: row.endedAt && { at: row.endedAt.toISOString(), by: row.endedBy, reason: row.endReason ?? '' },
    disputed: row.disputedAt && {
      at: row.disputedAt.toISOString(),
      by: row.disputedBy,
      reason: row.disputeReason ?? '',
    },
    legibility: row.legibility,
  };
}

export function toCoveringView(
  row: Row<'covering'>,
  hides: CoveringView['hides'],
  takenBack: TakenBackView | null,
): CoveringView {
  return {
    id: row.id,
    name: row.name,
    kind: row.kind as CoveringKind,
    plannedDay: row.plannedDay,
    zone: row.zone,
    except: row.exceptMarks,
    hides,
    note: row.note,
    hold: {
      state: row.holdState,
      said: row.holdAt && { at: row.holdAt.toISOString(), by: row.holdBy, note: row.holdNote ?? '' },
      lacking: row.holdLacking,
      release: row.releaseId,
    },
    closed: row.closedAt && {
      at: row.closedAt.toISOString(),
      by: row.closedBy,
      note: row.closeNote ?? '',
      release: row.closedRelease,
      without: row.closedWithout,
      takenBack,
    },
    changedAt: row.changedAt.toISOString(),
  };
}

export interface MemberCounts {
  readonly tags: number;
  readonly photos: number;
  readonly rank: number | null;
}

export function toMemberView(row: Row<'member'> & MemberCounts, lexicon: Lexicon): MemberView {
  return {
    mark: row.mark as Mark,
    kind: row.kind,
    name: row.name,
    place: row.place,
    track: trackOf(row.track, row.kind, lexicon),
    statedTrack: row.track,
    note: row.note,
    other: row.other,
    setOut: row.setOut,
    retired: row.retired,
    stage: row.rank === null ? null : (STAGES[row.rank] ?? null),
    tags: row.tags,
    photos: row.photos,
  };
}

/** The place of a stage in the order of work, in SQL. */
export function rankOf(eb: ExpressionBuilder<Tables, 'tag'>) {
  const order = sql.join(STAGES.map((stage: Stage) => sql.lit(stage)));
  return sql<number>`array_position(array[${order}]::text[], ${eb.ref('tag.stage')}) - 1`;
}
