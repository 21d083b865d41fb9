import { useRef, useState } from 'react';
import type { Paper } from '#domain/verify/check-paper';
import { verifyArchive, type Verdict } from '#domain/verify/verify-archive';
import { Wrong } from '#domain/verify/wrong';
import { openChosen, type Chosen } from './chosen-files.ts';
import { nobleHashing } from './noble-hashing.ts';

export type CheckState =
  | { readonly kind: 'nothing' }
  | { readonly kind: 'checking'; readonly done: number; readonly total: number }
  | { readonly kind: 'right'; readonly verdict: Verdict }
  | { readonly kind: 'wrong'; readonly wrong: Wrong };

const SHOW_EVERY_MS = 100;

/** Checks what is chosen, one at a time: a new choice ends the check of the one before. */
export function useCheck() {
  const [state, setState] = useState<CheckState>({ kind: 'nothing' });
  const latest = useRef(0);
  const check = async (chosen: Chosen, paper: Paper | null) => {
    latest.current += 1;
    const run = latest.current;
    let shown = 0;
    const progress = (done: number, total: number) => {
      if (run !== latest.current) throw new Superseded();
      if (Date.now() - shown < SHOW_EVERY_MS) return;
      shown = Date.now();
      setState({ kind: 'checking', done, total });
    };
    setState({ kind: 'checking', done: 0, total: 0 });
    const outcome = await outcomeOf(chosen, paper, progress);
    if (run === latest.current) setState(outcome);
  };
  return { state, check };
}

/** The check goes on for an archive that nobody waits for any more. */
class Superseded extends Error {}

async function outcomeOf(
  chosen: Chosen,
  paper: Paper | null,
  progress: (done: number, total: number) => void,
): Promise<CheckState> {
  try {
    const archive = await openChosen(chosen);
    return { kind: 'right', verdict: await verifyArchive(archive, nobleHashing, { paper, progress }) };
  } catch (error) {
    if (error instanceof Wrong) return { kind: 'wrong', wrong: error };
    const reason = error instanceof Error ? error.message : String(error);
    return { kind: 'wrong', wrong: new Wrong('not-an-archive', { file: '' }, { reason }) };
  }
}
