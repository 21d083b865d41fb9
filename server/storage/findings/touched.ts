import { cameraKey } from '#domain/photo/camera-key';
import type { Entry } from '#domain/ledger/statements';

/** What of a house has changed, so that the findings that rest on it must be made again. */
export interface Touched {
  readonly photos: Set<string>;
  /** Photos of which only the picture is new: those that are alike. */
  readonly pictures: Set<string>;
  /** cameraKey of those whose clocks were put right: all their photos. */
  readonly cameras: Set<string>;
  readonly marks: Set<string>;
  readonly coverings: Set<string>;
  /** All coverings, and nothing else: what lay over their members decides what was lost under them. */
  allCoverings: boolean;
  /** Everything, as when the house's zone or site is another. */
  all: boolean;
}

export function nothingTouched(): Touched {
  return {
    photos: new Set(),
    pictures: new Set(),
    cameras: new Set(),
    marks: new Set(),
    coverings: new Set(),
    allCoverings: false,
    all: false,
  };
}

/** Adds what an entry changes. Which findings rest on it is followed from there by `refreshFindings`. */
export function touch(touched: Touched, { kind, payload }: Entry): void {
  switch (kind) {
    case 'photo.added':
    case 'photo.dated':
    case 'photo.dating-withdrawn':
      touched.photos.add(payload.photo);
      return;
    case 'tag.placed':
    case 'tag.withdrawn':
      touched.photos.add(payload.photo);
      touched.marks.add(payload.mark);
      return;
    case 'tag.superseded':
      touched.photos.add(payload.photo);
      touched.marks.add(payload.mark).add(payload.was);
      return;
    case 'tag.disputed':
      touched.marks.add(payload.mark);
      return;
    case 'clock.marked':
    case 'clock.withdrawn': {
      const camera = cameraKey(payload.camera);
      if (camera !== null) touched.cameras.add(camera);
      return;
    }
    case 'schedule.imported':
      for (const { mark } of [...payload.added, ...payload.changed]) touched.marks.add(mark);
      for (const mark of payload.retired) touched.marks.add(mark);
      return;
    case 'member.entered':
    case 'member.retired':
    case 'member.removed':
      touched.marks.add(payload.mark);
      return;
    case 'covering.planned':
    case 'covering.changed':
    case 'covering.closed':
    case 'covering.reopened':
    case 'release.withdrawn':
      // Once a release is taken back, what it accepted is lost under a covering that has closed.
      touched.coverings.add(payload.covering);
      return;
    case 'protection.laid':
    case 'protection.changed':
    case 'protection.lifted':
    case 'protection.lifting-withdrawn':
    case 'protection.withdrawn':
      touched.allCoverings = true;
      return;
    case 'findings.accepted':
      // What was accepted may count again, and then a covering lacks it no longer.
      for (const { marks } of payload.findings) for (const mark of marks) touched.marks.add(mark);
      return;
    case 'finding.reopened':
      for (const mark of payload.marks) touched.marks.add(mark);
      return;
    // A grid or a requirement moves what coverings hide, and with it what was lost under them.
    // A term decides the stages of all members of its kind.
    case 'term.entered':
    case 'term.removed':
    case 'house.created':
    case 'house.changed':
    case 'grid.stated':
    case 'requirements.stated':
      touched.all = true;
      return;
    // What a covering closed under is part of its closing; where a device was decides nothing.
    case 'covering.ready':
    case 'covering.ready-withdrawn':
    case 'covering.refused':
    case 'covering.released':
    case 'release-rule.stated':
    case 'photo.position-added':
    case 'role.granted':
    case 'role.withdrawn':
    case 'guest.admitted':
    case 'guest.ended':
    case 'password.link-made':
    case 'password.renewed':
    case 'note.written':
    case 'head.stamped':
      return;
    default:
      kind satisfies never;
  }
}
