import type { FindingKind } from '#domain/record/findings/kinds';

/** Where the words of an answer stand: a finding is accepted, a doubt is answered. */
export function answerWords(kind: FindingKind): 'findings' | 'findings.doubt' {
  return kind === 'disputed' ? 'findings.doubt' : 'findings';
}
