import { amend, type Act, type Acts } from './state.ts';

const OPEN = { closedAt: null, closedBy: null, closeNote: null, release: null, without: null };

/** In the first versions a covering had no zone. What a zone hides is worked out, not stated: it stands in no table. */
const state: Act = ({ coverings }, payload) => {
  const covering = payload.text('covering');
  coverings.set(covering, {
    hold: null,
    ...OPEN,
    ...coverings.get(covering),
    covering,
    name: payload.text('name'),
    kind: payload.text('kind'),
    plannedDay: payload.any('plannedDay', null),
    note: payload.any('note', ''),
    zone: payload.any('zone', null),
    except: payload.any('except', []),
    hides: payload.list('hides'),
  });
};

/** In the first version nobody said by which release it closed, or why without one. */
const close: Act = ({ coverings }, payload, { by }) =>
  amend(coverings, payload.text('covering'), {
    closedAt: payload.text('closedAt'),
    closedBy: by,
    closeNote: payload.any('note', ''),
    release: payload.any('release', null),
    without: payload.any('without', null),
  });

/** The latest word about the hold: which one, and where it stands in the ledger. */
export const hold: Act = ({ coverings }, payload, { kind, seq }) =>
  amend(coverings, payload.text('covering'), { hold: { said: kind, seq } });

export const COVERING_ACTS: Acts = {
  'covering.planned': { 1: state, 2: state },
  'covering.changed': { 1: state, 2: state },
  'covering.closed': { 1: close, 2: close },
  'covering.reopened': { 1: ({ coverings }, payload) => amend(coverings, payload.text('covering'), OPEN) },
  'covering.ready': { 1: hold },
  'covering.ready-withdrawn': { 1: hold },
  'covering.refused': { 1: hold },
};
