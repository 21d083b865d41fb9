import type { Json } from '../../ledger/canonical-json.ts';
import { amend, type Act, type Acts } from './state.ts';

const add: Act = ({ photos }, payload, { at, by }) => {
  const photo = payload.text('photo');
  photos.set(photo, {
    photo,
    sha256: payload.text('sha256'),
    bytes: payload.count('bytes'),
    mediaType: payload.text('mediaType'),
    fileName: payload.text('fileName'),
    width: payload.count('width'),
    height: payload.count('height'),
    addedAt: at,
    addedBy: by,
    byHand: null,
  });
};

const date: Act = ({ photos }, payload, { at, by }) => {
  const said: Record<string, Json> = { at, by };
  for (const field of payload.keys) if (field !== 'photo') said[field] = payload.any(field);
  amend(photos, payload.text('photo'), { byHand: said });
};

export const PHOTO_ACTS: Acts = {
  'photo.added': { 1: add, 2: add },
  'photo.dated': { 1: date },
  'photo.dating-withdrawn': {
    1: ({ photos }, payload) => amend(photos, payload.text('photo'), { byHand: null }),
  },
};
