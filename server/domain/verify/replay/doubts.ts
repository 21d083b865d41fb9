import { saidOf } from './people.ts';
import type { Act, Acts, State, TagWord } from './state.ts';

/** Puts a word to what was said of a tag. */
export function hear({ ofTags }: Pick<State, 'ofTags'>, tag: string, word: TagWord): void {
  const said = ofTags.get(tag);
  if (said) said.push(word);
  else ofTags.set(tag, [word]);
}

const doubt: Act = (state, payload, entry) =>
  hear(state, payload.text('tag'), {
    ...{ ...saidOf(state, entry), what: 'doubted', reason: payload.text('reason') },
  });

/** How the key of a finding begins that is a doubt; the rest of it names the tag. */
const DOUBT = 'disputed:';

/** Other findings are no words about a single tag. */
function hearOfFinding(state: State, key: string, word: TagWord): void {
  if (key.startsWith(DOUBT)) hear(state, key.slice(DOUBT.length), word);
}

const answer: Act = (state, payload, entry) => {
  const word = { ...saidOf(state, entry), what: 'answered', reason: payload.text('reason') } as const;
  for (const finding of payload.objects('findings')) hearOfFinding(state, finding.text('key'), word);
};

const reopen: Act = (state, payload, entry) =>
  hearOfFinding(state, payload.text('key'), {
    ...{ ...saidOf(state, entry), what: 'reopened', reason: payload.text('reason') },
  });

export const DOUBT_ACTS: Acts = {
  'tag.disputed': { 1: doubt },
  'findings.accepted': { 1: answer },
  'finding.reopened': { 1: reopen },
};
