import type { Act, Story } from '../story/act.ts';

/** Says what is going on, once for each sort of work. */
export function tellingOf({ acts }: Story, say: (line: string) => void): (act: Act) => void {
  const count = (does: Act['does']) => acts.filter((act) => act.does === does).length;
  let photosBegun = false;
  say('Opening the record of an invented boathouse …');
  return ({ does }) => {
    if (does !== 'add-photo' || photosBegun) return;
    photosBegun = true;
    say(`Adding ${count('add-photo')} photos and ${count('tag')} tags, evening by evening …`);
  };
}
