import type { RecordReader } from '../services/record-store.ts';
import type { Db } from './open-database.ts';
import { readAlike } from './queries/alike.ts';
import { readArchiveMaterial, readOriginals } from './queries/archive.ts';
import { readBriefDays } from './queries/brief-days.ts';
import { readCameras, readClockMark, readGrounds } from './queries/clock.ts';
import { readCovering, readCoverings } from './queries/coverings.ts';
import { readDays, readNotes } from './queries/days.ts';
import {
  readAccess,
  readHouseName,
  readHouses,
  readHousesWithoutOwner,
  readPeople,
  readZone,
  roleIn,
} from './queries/houses.ts';
import { readGuest, readGuests } from './queries/guests.ts';
import { readFrameGround, readFrameMembers } from './queries/frame.ts';
import { readFindingCounts, readFindings } from './queries/findings.ts';
import { readHouseState, readStatementsFrom } from './queries/changes.ts';
import { readDaysBefore, readNotesAfter, readWaiting } from './queries/journal.ts';
import {
  hasLedger,
  readEntries,
  readDoubtsAbout,
  readEntriesAbout,
  readEntriesBetween,
  readLastAbout,
  readLedgerState,
  readSubjectsAfter,
} from './queries/ledger.ts';
import { readLedgerExtent, readLedgerText } from './queries/ledger-text.ts';
import { isReferredTo, readMembers, readSchedule } from './queries/members.ts';
import { readProtection, readProtections } from './queries/protections.ts';
import { readAdders, readPhotoCounts, readPhotoOrder, readPhotos } from './queries/photo-list.ts';
import { readPhotoPlaces } from './queries/photo-places.ts';
import { readPhoto, readPhotoByContent, readPhotoFile, readPhotosWithoutPictures } from './queries/photos.ts';
import { readReleaseGround } from './queries/release-ground.ts';
import { readHolds, readRelease, readWaived } from './queries/releases.ts';
import { readLastStamp, readUnstampedHead } from './queries/stamps.ts';
import { readKindSightings, readTerms } from './queries/terms.ts';
import { readReportMaterial, readSightings, readSightingsOf, readTag, readTagsOn } from './queries/tags.ts';

/** The queries, by noun, over a connection or over an open transaction. */
export function recordReader(db: Db): RecordReader {
  return {
    access: (thing, id, person) => readAccess(db, thing, id, person),
    roleIn: (house, person) => roleIn(db, house, person),
    house: async (house, person) => (await readHouses(db, person, house))[0],
    houses: (person) => readHouses(db, person),
    housesWithoutOwner: () => readHousesWithoutOwner(db),
    hasHouse: (house) => hasLedger(db, house),
    zone: (house) => readZone(db, house),
    houseName: (house) => readHouseName(db, house),
    people: (house) => readPeople(db, house),
    guest: (guest) => readGuest(db, guest),
    guests: (house, now) => readGuests(db, house, now),
    members: (house) => readMembers(db, house),
    member: async (house, mark) => (await readMembers(db, house, mark))[0],
    grid: async (house) => (await readFrameGround(db, house)).stated,
    requirements: async (house) => (await readFrameGround(db, house)).requirements,
    frameMembers: (house, zone, part) => readFrameMembers(db, house, zone, part),
    schedule: (house) => readSchedule(db, house),
    isReferredTo: (house, mark) => isReferredTo(db, house, mark),
    photo: (photo) => readPhoto(db, photo),
    photoByContent: (house, sha256) => readPhotoByContent(db, house, sha256),
    photos: (house, filter, window) => readPhotos(db, house, filter, window),
    photoCounts: (house, filter, place) => readPhotoCounts(db, house, filter, place),
    photoOrder: (house, filter) => readPhotoOrder(db, house, filter),
    adders: (house) => readAdders(db, house),
    photoPlaces: (house, day) => readPhotoPlaces(db, house, day),
    photosWithoutPictures: () => readPhotosWithoutPictures(db),
    photoFile: (photo) => readPhotoFile(db, photo),
    grounds: (photo) => readGrounds(db, photo),
    clockMark: (mark) => readClockMark(db, mark),
    cameras: (house) => readCameras(db, house),
    alike: (photo) => readAlike(db, photo),
    tag: (tag) => readTag(db, tag),
    tagsOn: (photo) => readTagsOn(db, photo),
    sightings: (house, mark) => readSightings(db, house, mark),
    sightingsOf: (tags) => readSightingsOf(db, tags),
    release: (release) => readRelease(db, release),
    releaseGround: (of) => readReleaseGround(db, of),
    covering: (covering) => readCovering(db, covering),
    coverings: (house) => readCoverings(db, house),
    holds: (house, limit) => readHolds(db, house, limit),
    protection: (protection) => readProtection(db, protection),
    protections: (house, mark) => readProtections(db, house, mark),
    waived: (releases) => readWaived(db, releases),
    reportMaterial: (house, part) => readReportMaterial(db, house, part),
    terms: (house) => readTerms(db, house),
    kindSightings: (house, kind, limit) => readKindSightings(db, house, kind, limit),
    findings: (house, filter) => readFindings(db, house, filter),
    findingCounts: (house) => readFindingCounts(db, house),
    days: (house, zone) => readDays(db, house, zone),
    daysBefore: (house, zone, before, limit) => readDaysBefore(db, house, zone, before, limit),
    briefDays: (house, zone, days, limits) => readBriefDays(db, house, zone, days, limits),
    notesAfter: (house, day, limit) => readNotesAfter(db, house, day, limit),
    waiting: (house, limits) => readWaiting(db, house, limits),
    notes: (house, day) => readNotes(db, house, day),
    entries: (house, from, limit) => readEntries(db, house, from, limit),
    entriesAbout: (house, subject) => readEntriesAbout(db, house, subject),
    doubtsAbout: (house, marks) => readDoubtsAbout(db, house, marks),
    lastAbout: (house, subject, kinds) => readLastAbout(db, house, subject, kinds),
    subjectsAfter: (house, subjects, said) => readSubjectsAfter(db, house, subjects, said),
    entriesBetween: (house, from, to) => readEntriesBetween(db, house, from, to),
    houseState: (house) => readHouseState(db, house),
    statementsFrom: (house, from, limit) => readStatementsFrom(db, house, from, limit),
    ledgerState: (house) => readLedgerState(db, house),
    ledgerExtent: (house) => readLedgerExtent(db, house),
    ledgerText: (house, from, to) => readLedgerText(db, house, from, to),
    originals: (house) => readOriginals(db, house),
    archiveMaterial: (house) => readArchiveMaterial(db, house),
    lastStamp: (house) => readLastStamp(db, house),
    unstampedHead: (house) => readUnstampedHead(db, house),
  };
}
