import type { ROUTES, RouteName } from '#domain/contract/routes';

/**
 * Method and path of every route, repeated here so that the browser need not load the schema library.
 * The type holds it to the contract: a route that is missing or differs does not compile.
 */
type Paths = {
  readonly [N in RouteName]: readonly [(typeof ROUTES)[N]['method'], (typeof ROUTES)[N]['path']];
};

export const PATHS: Paths = {
  health: ['GET', '/health'],
  openapi: ['GET', '/openapi.json'],
  readSession: ['GET', '/session'],
  signIn: ['POST', '/session'],
  signOut: ['DELETE', '/session'],
  readLink: ['GET', '/links/{link}'],
  useLink: ['POST', '/links/{link}'],
  listTokens: ['GET', '/tokens'],
  createToken: ['POST', '/tokens'],
  deleteToken: ['DELETE', '/tokens/{token}'],
  createHouse: ['POST', '/houses'],
  listHouses: ['GET', '/houses'],
  readHouse: ['GET', '/houses/{house}'],
  changeHouse: ['PATCH', '/houses/{house}'],
  houseEvents: ['GET', '/houses/{house}/events'],
  houseChanges: ['GET', '/houses/{house}/changes'],
  listPeople: ['GET', '/houses/{house}/people'],
  addPerson: ['POST', '/houses/{house}/people'],
  removePerson: ['DELETE', '/houses/{house}/people/{person}'],
  importSchedule: ['POST', '/houses/{house}/schedule'],
  listMembers: ['GET', '/houses/{house}/members'],
  readMember: ['GET', '/houses/{house}/members/{mark}'],
  putMember: ['PUT', '/houses/{house}/members/{mark}'],
  deleteMember: ['DELETE', '/houses/{house}/members/{mark}'],
  findPhoto: ['GET', '/houses/{house}/photos/known'],
  addPhotos: ['POST', '/houses/{house}/photos'],
  listPhotos: ['GET', '/houses/{house}/photos'],
  countPhotos: ['GET', '/houses/{house}/photo-days'],
  orderPhotos: ['GET', '/houses/{house}/photo-order'],
  listAdders: ['GET', '/houses/{house}/photo-people'],
  readPhoto: ['GET', '/photos/{photo}'],
  photoOriginal: ['GET', '/photos/{photo}/original'],
  photoPreview: ['GET', '/photos/{photo}/preview'],
  photoThumb: ['GET', '/photos/{photo}/thumb'],
  photoCrop: ['GET', '/photos/{photo}/crop'],
  placeTag: ['POST', '/photos/{photo}/tags'],
  supersedeTag: ['PUT', '/tags/{tag}'],
  withdrawTag: ['DELETE', '/tags/{tag}'],
  planCovering: ['POST', '/houses/{house}/coverings'],
  listCoverings: ['GET', '/houses/{house}/coverings'],
  changeCovering: ['PUT', '/coverings/{covering}'],
  closeCovering: ['POST', '/coverings/{covering}/close'],
  reopenCovering: ['POST', '/coverings/{covering}/reopen'],
  closingReport: ['GET', '/houses/{house}/closing-report'],
  readJournal: ['GET', '/houses/{house}/journal'],
  listEarlierDays: ['GET', '/houses/{house}/journal/days'],
  listDays: ['GET', '/houses/{house}/days'],
  readDay: ['GET', '/houses/{house}/days/{date}'],
  writeNote: ['PUT', '/houses/{house}/days/{date}/note'],
  readLedger: ['GET', '/houses/{house}/ledger'],
};
