import type { Camera } from '../contract/clock.ts';
import { cameraKey } from '../photo/camera-key.ts';
import type { Statement } from './statements.ts';

/** Of time stamps: a house has no other. */
export const STAMPS_SUBJECT = 'stamps';
export const memberSubject = (mark: string): string => `member:${mark}`;
export const photoSubject = (photo: string): string => `photo:${photo}`;
export const coveringSubject = (covering: string): string => `covering:${covering}`;

/** What a statement is about, as `member:<mark>`, `photo:<id>`, `camera:<key>`, `covering:<id>`, `protection:<id>`, `term:<id>`, `day:<date>`, `stamps`. */
export function subjectsOf(statement: Statement): string[] {
  return [...new Set(listSubjects(statement))];
}

function listSubjects(statement: Statement): string[] {
  const { kind, payload } = statement;
  switch (kind) {
    case 'schedule.imported':
      return [...payload.added, ...payload.changed]
        .map((m) => memberSubject(m.mark))
        .concat(payload.retired.map(memberSubject));
    case 'member.entered':
    case 'member.retired':
    case 'member.removed':
      return [memberSubject(payload.mark)];
    case 'photo.added':
    case 'photo.position-added':
    case 'photo.dated':
    case 'photo.dating-withdrawn':
      return [photoSubject(payload.photo)];
    case 'clock.marked':
      return [photoSubject(payload.photo), camera(payload.camera)];
    case 'clock.withdrawn':
      return [camera(payload.camera)];
    case 'tag.placed':
    case 'tag.withdrawn':
    case 'tag.disputed':
      return [photoSubject(payload.photo), memberSubject(payload.mark)];
    case 'tag.superseded':
      return [photoSubject(payload.photo), memberSubject(payload.mark), memberSubject(payload.was)];
    case 'covering.planned':
    case 'covering.changed':
      return [
        coveringSubject(payload.covering),
        ...[...payload.hides.map(({ mark }) => mark), ...payload.except].map(memberSubject),
      ];
    case 'covering.closed':
    case 'covering.reopened':
    case 'covering.ready':
    case 'covering.ready-withdrawn':
    case 'release.withdrawn':
      return [coveringSubject(payload.covering)];
    case 'covering.refused':
      return [coveringSubject(payload.covering), ...payload.lacking.map(({ mark }) => memberSubject(mark))];
    case 'covering.released':
      return [coveringSubject(payload.covering), ...payload.hides.map(({ mark }) => memberSubject(mark))];
    case 'protection.laid':
    case 'protection.changed':
      return [
        `protection:${payload.protection}`,
        ...[...payload.hides, ...payload.except].map(memberSubject),
      ];
    case 'protection.lifted':
    case 'protection.lifting-withdrawn':
    case 'protection.withdrawn':
      return [`protection:${payload.protection}`];
    case 'findings.accepted':
      return payload.findings.flatMap(findingSubjects);
    case 'finding.reopened':
      return findingSubjects(payload);
    case 'term.entered':
    case 'term.removed':
      return [`term:${payload.term}`];
    case 'head.stamped':
      return [STAMPS_SUBJECT];
    case 'note.written':
      return [`day:${payload.day}`];
    case 'guest.admitted':
      return [
        'mark' in payload.shows ? memberSubject(payload.shows.mark) : coveringSubject(payload.shows.covering),
      ];
    case 'house.created':
    case 'house.changed':
    case 'grid.stated':
    case 'requirements.stated':
    case 'release-rule.stated':
    case 'role.granted':
    case 'role.withdrawn':
    case 'guest.ended':
    case 'password.link-made':
    case 'password.renewed':
      return [];
  }
}

function findingSubjects(about: { photos: string[]; marks: string[]; covering: string | null }): string[] {
  const { photos, marks, covering: hiding } = about;
  return [
    ...photos.map(photoSubject),
    ...marks.map(memberSubject),
    ...(hiding === null ? [] : [coveringSubject(hiding)]),
  ];
}

const camera = (facts: Camera) => `camera:${cameraKey(facts) ?? ''}`;
