import type { Said, JsonRecord } from '../../support/hand-made-archive.ts';
import {
  BY,
  HOUSE,
  hashOf,
  makeArchive,
  utf8,
  writeLedger,
  type Files,
} from '../../support/hand-made-archive.ts';

export { HOUSE };
export const ORIGINAL = utf8('not a picture, but somebody’s bytes');
export const COVERING = 'c0000000-0000-4000-8000-000000000001';
export const RELEASE = 'e0000000-0000-4000-8000-000000000001';
const PHOTO = 'f0000000-0000-4000-8000-000000000001';
const TAG = 'a0000000-0000-4000-8000-000000000001';
export const NEW_TAG = 'a0000000-0000-4000-8000-000000000002';
const REGION = { shape: 'rectangle', x: 0.1, y: 0.1, w: 0.2, h: 0.2 };
const ZONE = { shape: 'floor', level: '1F' };
const PHOTO_FACTS = {
  sha256: hashOf(ORIGINAL),
  ...{ bytes: ORIGINAL.length, mediaType: 'image/jpeg', fileName: '壁.jpg', width: 40, height: 30 },
};

const member = (mark: string, more: JsonRecord = {}) => ({
  ...{ mark, kind: '貫', name: '', place: '', track: null, note: '', other: {} },
  ...more,
});
const covering = { covering: COVERING, name: '北の壁', kind: 'plaster', plannedDay: '2026-04-20', note: '' };
const hides = [{ mark: 'い二', least: 'pegged' }];

/** Statements of every version that there has been, and those of releases. The head is that over 9 entries. */
const beforeRelease: readonly Said[] = [
  {
    kind: 'house.created',
    payload: { name: '谷の舟小屋', zone: 'Asia/Tokyo', firstDay: null, site: null },
  },
  { kind: 'role.granted', payload: { person: BY, role: 'owner' } },
  {
    kind: 'schedule.imported',
    payload: {
      source: { fileName: 'schedule.csv', sha256: '0'.repeat(64) },
      ...{ added: [member('い一'), member('い二')], changed: [], retired: [], badRows: 0 },
    },
  },
  { kind: 'member.entered', version: 2, payload: member('い三', { setOut: null, track: 'wall' }) },
  { kind: 'photo.added', payload: { photo: PHOTO, ...PHOTO_FACTS, readings: {} } },
  {
    kind: 'tag.placed',
    payload: { tag: TAG, photo: PHOTO, mark: 'い一', stage: 'cut', region: REGION, note: '' },
  },
  {
    kind: 'tag.superseded',
    version: 2,
    payload: {
      ...{ tag: NEW_TAG, photo: PHOTO, mark: 'い二', stage: 'pegged', region: REGION, note: '楔' },
      ...{ stretch: { from: '一', to: '二' }, supersedes: TAG, was: 'い一' },
    },
  },
  { kind: 'covering.planned', payload: { ...covering, hides } },
  { kind: 'covering.ready', payload: { covering: COVERING, note: '' } },
];

export const HEADS = writeLedger(beforeRelease).heads;

export const release = (more: JsonRecord = {}): Said => ({
  kind: 'covering.released',
  payload: {
    ...{ release: RELEASE, covering: COVERING, head: { size: 9, hash: HEADS[9] ?? '' }, note: '' },
    hides: [{ mark: 'い二', least: 'pegged', stretch: null, tags: [NEW_TAG] }],
    waived: [],
    ...more,
  },
});

export const SAID: readonly Said[] = [
  ...beforeRelease,
  release(),
  {
    kind: 'covering.closed',
    version: 2,
    payload: {
      ...{ covering: COVERING, closedAt: '2026-04-21T01:00:00.000Z', note: '' },
      ...{ release: RELEASE, without: null },
    },
  },
  { kind: 'member.retired', payload: { mark: 'い一' } },
  { kind: 'photo.dated', payload: { photo: PHOTO, takenAt: '2026-04-02T00:00:00.000Z', reason: '日誌' } },
  // Set back by somebody: told, and nothing wrong.
  { kind: 'note.written', payload: { day: '2026-04-02', text: '雨' }, at: '2026-04-01T00:00:00.000Z' },
];

const at = (seq: number) => new Date(Date.UTC(2026, 3, 1, 0, 0, seq)).toISOString();

/** What the record says in the end, written down by hand. */
export const TABLES: Readonly<Record<string, readonly JsonRecord[]>> = {
  members: [
    { ...member('い一'), setOut: null, retired: true },
    { ...member('い三', { track: 'wall' }), setOut: null, retired: false },
    { ...member('い二'), setOut: null, retired: false },
  ],
  photos: [
    {
      ...{ photo: PHOTO, ...PHOTO_FACTS, addedAt: at(4), addedBy: BY },
      byHand: { takenAt: '2026-04-02T00:00:00.000Z', reason: '日誌', at: at(12), by: BY },
    },
  ],
  tags: [
    {
      ...{ tag: NEW_TAG, photo: PHOTO, mark: 'い二', stage: 'pegged', region: REGION, note: '楔' },
      ...{ stretch: { from: '一', to: '二' }, supersedes: TAG, saidAt: at(6), saidBy: BY },
    },
  ],
  coverings: [
    {
      ...{ ...covering, hides, zone: null, except: [] },
      hold: { said: 'covering.released', seq: 9 },
      ...{ closedAt: '2026-04-21T01:00:00.000Z', closedBy: BY, closeNote: '' },
      ...{ release: RELEASE, without: null },
    },
  ],
  releases: [
    {
      ...{ release: RELEASE, covering: COVERING, seq: 9, at: at(9), by: BY },
      head: { size: 9, hash: HEADS[9] ?? '' },
      hides: [{ mark: 'い二', least: 'pegged', stretch: null, tags: [NEW_TAG] }],
      ...{ waived: [], note: '', withdrawn: null },
    },
  ],
};

export const zoned = { ...covering, hides, zone: ZONE, except: ['い三'] };

export function someArchive(said = SAID, tables = TABLES): Files {
  return makeArchive({ said, tables, originals: [{ bytes: ORIGINAL, fileName: '壁.jpg' }] });
}
