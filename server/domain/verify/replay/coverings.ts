import type { Json } from '../../ledger/canonical-json.ts';
import { lineOf } from '../ledger-entry.ts';
import { Wrong } from '../wrong.ts';
import { saidOf } from './people.ts';
import { amend, type Act, type Acts, type State } from './state.ts';

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
const close: Act = (state, payload, entry) => {
  const [covering, closedAt] = [payload.text('covering'), payload.instant('closedAt')];
  const words = {
    release: payload.textOr('release', null),
    without: payload.textOr('without', null),
    note: payload.textOr('note', ''),
  };
  const { release, without, note } = words;
  const isGiven = state.given.some((given) => given.release === release && given.covering === covering);
  if (release !== null && !isGiven) throw new Wrong('closing-release', lineOf(entry.seq), { release });
  const said = { ...saidOf(state, entry), covering, name: nameOf(state, covering) };
  state.closings.push({ ...said, closedAt, ...words, takenBack: null });
  amend(state.coverings, covering, {
    ...{ closedAt, closedBy: entry.by, closeNote: note, release, without },
  });
};

const reopen: Act = (state, payload, entry) => {
  const [covering, reason] = [payload.text('covering'), payload.text('reason')];
  const last = state.closings.findLastIndex((closing) => closing.covering === covering);
  const closing = state.closings[last];
  if (closing?.takenBack === null)
    state.closings[last] = { ...closing, takenBack: { ...saidOf(state, entry), reason } };
  amend(state.coverings, covering, OPEN);
};

/** What is ready anew has no release that stands: the one that stood ends with it. */
const ready: Act = (state, payload, entry) => {
  const { given, takenBack, ended } = state;
  const last = given.findLast(({ covering }) => covering === payload.text('covering'));
  const stands = last && !takenBack.has(last.release) && !ended.has(last.release);
  if (stands) ended.set(last.release, saidOf(state, entry));
  hold(state, payload, entry);
};

const refuse: Act = (state, payload, entry) => {
  const covering = payload.text('covering');
  state.refusals.push({
    ...{ ...saidOf(state, entry), covering, name: nameOf(state, covering) },
    lacking: payload
      .objects('lacking')
      .map((one) => ({ mark: one.text('mark'), note: one.textOr('note', '') })),
    note: payload.textOr('note', ''),
  });
  hold(state, payload, entry);
};

/** As it is called now; one that nobody planned has no name. */
export function nameOf({ coverings }: Pick<State, 'coverings'>, covering: string): string {
  const name: Json = coverings.get(covering)?.['name'] ?? covering;
  return typeof name === 'string' ? name : covering;
}

/** The latest word about the hold: which one, and where it stands in the ledger. */
export const hold: Act = ({ coverings }, payload, { kind, seq }) =>
  amend(coverings, payload.text('covering'), { hold: { said: kind, seq } });

export const COVERING_ACTS: Acts = {
  'covering.planned': { 1: state, 2: state },
  'covering.changed': { 1: state, 2: state },
  'covering.closed': { 1: close, 2: close },
  'covering.reopened': { 1: reopen },
  'covering.ready': { 1: ready },
  'covering.ready-withdrawn': { 1: hold },
  'covering.refused': { 1: refuse },
};
