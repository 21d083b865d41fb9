import type { Role } from '#domain/contract/shapes';

/** Who may use an operation: anyone, anyone with an account, or these roles in the house. */
export type Who = 'anyone' | 'account' | readonly Role[];

const everyRole: Who = ['owner', 'carpenter', 'inspector', 'builder'];
const crew: Who = ['owner', 'carpenter', 'inspector'];
const recorders: Who = ['owner', 'carpenter'];
const reviewers: Who = ['owner', 'inspector'];
const keeper: Who = ['owner'];

/**
 * Operation by operation, as people agreed on it: inspectors do not tag, builders read. Written out by hand
 * and never read from what the server decides by, which it is held against.
 */
export const WHO_MAY: Readonly<Record<string, Who>> = {
  health: 'anyone',
  openapi: 'anyone',
  readSession: 'anyone',
  signIn: 'anyone',
  signOut: 'anyone',
  readLink: 'anyone',
  useLink: 'anyone',
  renewPassword: 'anyone',
  readGuestPage: 'anyone',
  guestPicture: 'anyone',
  readCalendar: 'anyone',

  changePassword: 'account',
  listSessions: 'account',
  endSessions: 'account',
  listTokens: 'account',
  createToken: 'account',
  deleteToken: 'account',
  createHouse: 'account',
  listHouses: 'account',

  readHouse: everyRole,
  houseEvents: everyRole,
  houseChanges: everyRole,
  listPeople: everyRole,
  changeHouse: keeper,
  addPerson: keeper,
  removePerson: keeper,
  endInvitation: keeper,
  makePasswordLink: keeper,
  listGuests: keeper,
  admitGuest: keeper,
  endGuest: keeper,

  listMembers: everyRole,
  readMember: everyRole,
  importSchedule: recorders,
  putMember: recorders,
  deleteMember: recorders,

  findPhoto: everyRole,
  listPhotos: everyRole,
  countPhotos: everyRole,
  orderPhotos: everyRole,
  listAdders: everyRole,
  listPlaces: everyRole,
  readPhoto: everyRole,
  photoOriginal: everyRole,
  photoWhole: everyRole,
  photoCopy: everyRole,
  photoPreview: everyRole,
  photoThumb: everyRole,
  photoCrop: everyRole,
  tagCrop: everyRole,
  photoLegibility: everyRole,
  alikePhotos: everyRole,
  addPhotos: crew,
  addDevicePosition: crew,
  placeTag: recorders,
  supersedeTag: recorders,
  withdrawTag: recorders,

  listCameras: everyRole,
  markClock: recorders,
  withdrawClockMark: recorders,
  datePhoto: recorders,
  withdrawDate: recorders,

  readGrid: everyRole,
  readRequirements: everyRole,
  readFrame: everyRole,
  readFrameOfPhoto: everyRole,
  stateGrid: recorders,
  stateRequirements: recorders,

  listCoverings: everyRole,
  closingReport: everyRole,
  reportOfPhoto: everyRole,
  wallFigures: everyRole,
  shotList: everyRole,
  planCovering: recorders,
  changeCovering: recorders,
  closeCovering: recorders,
  reopenCovering: recorders,

  readCoveringLedger: everyRole,
  readReview: everyRole,
  readRelease: everyRole,
  releaseSheet: everyRole,
  readyCovering: recorders,
  withdrawReady: recorders,
  releaseCovering: reviewers,
  refuseCovering: reviewers,
  withdrawRelease: reviewers,
  disputeTag: reviewers,
  stateReleaseRule: keeper,

  listProtections: everyRole,
  layProtection: recorders,
  changeProtection: recorders,
  withdrawProtection: recorders,
  liftProtection: recorders,
  withdrawLifting: recorders,

  listFindings: everyRole,
  acceptFindings: crew,
  reopenFinding: crew,

  readJournal: everyRole,
  listEarlierDays: everyRole,
  listDays: everyRole,
  readDay: everyRole,
  readLedger: everyRole,
  readStamps: everyRole,
  readCalendarLink: everyRole,
  makeCalendarLink: everyRole,
  endCalendarLink: everyRole,
  readArchive: reviewers,
  archiveSize: reviewers,
  writeNote: crew,

  listTerms: everyRole,
  kindSightings: everyRole,
  putTerm: recorders,
  removeTerm: recorders,
};
