import type { Fields } from '../fields.ts';
import { amend, type Act, type Acts, type State } from './state.ts';

/** In the first versions members had no place in space. */
const enter: Act = ({ members }, facts) => {
  const mark = facts.text('mark');
  members.set(mark, {
    mark,
    kind: facts.any('kind', ''),
    name: facts.any('name', ''),
    place: facts.any('place', ''),
    track: facts.any('track', null),
    note: facts.any('note', ''),
    other: facts.any('other', {}),
    setOut: facts.any('setOut', null),
    retired: false,
  });
};

const retire = ({ members }: State, mark: string) => amend(members, mark, { retired: true });

const importSchedule: Act = (state, payload, entry) => {
  for (const list of ['added', 'changed'])
    payload.objects(list).forEach((facts: Fields) => enter(state, facts, entry));
  payload.texts('retired').forEach((mark) => retire(state, mark));
};

export const MEMBER_ACTS: Acts = {
  'schedule.imported': { 1: importSchedule, 2: importSchedule },
  'member.entered': { 1: enter, 2: enter },
  'member.retired': { 1: (state, payload) => retire(state, payload.text('mark')) },
  'member.removed': { 1: ({ members }, payload) => void members.delete(payload.text('mark')) },
};
