import type { HoldPhase } from '#domain/record/hold-phase';

const BOARD = 'M1.5 1.5h9v9h-9z';

/** In a square of 12: a board that is empty, looked at, barred, ticked; full once it has closed, half without release. */
const PATHS: Readonly<Record<HoldPhase, { line: string; fill: string }>> = {
  planned: { line: BOARD, fill: '' },
  ready: { line: BOARD, fill: 'M6 4a2 2 0 1 0 0 4a2 2 0 1 0 0-4z' },
  refused: { line: `${BOARD}M3.5 6h5`, fill: '' },
  released: { line: `${BOARD}M3.6 6.2l1.8 1.9l3.2-4.2`, fill: '' },
  outrun: { line: `${BOARD}M6 3.2v3.6M6 8.4v.9`, fill: '' },
  'under-release': { line: BOARD, fill: BOARD },
  'under-taken-back': { line: BOARD, fill: 'M1.5 1.5h9v2.4h-9zM1.5 8.1h9v2.4h-9z' },
  'without-release': { line: BOARD, fill: 'M1.5 1.5v9h9z' },
};

/** Told apart by form, not by colour. The words stand beside it. */
export function HoldSign({ phase }: { phase: HoldPhase }) {
  const { line, fill } = PATHS[phase];
  return (
    <svg className="verdict-sign" viewBox="0 0 12 12" width="14" height="14" aria-hidden="true">
      <path d={line} fill="none" stroke="currentColor" strokeWidth="1.4" />
      {fill === '' ? null : <path d={fill} fill="currentColor" />}
    </svg>
  );
}
