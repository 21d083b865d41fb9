import { STAGES, type Stage } from '#domain/frame/stage';
import type { UnitPoint } from '#domain/photo/region';
import type { Tool } from './bench-model.ts';

export interface Key {
  readonly key: string;
  /** Where the key sits, for Alt with digits: some keyboards write other signs then. */
  readonly code: string;
  readonly shift: boolean;
  /** Ctrl, or ⌘ on a Mac. */
  readonly command: boolean;
  readonly alt: boolean;
}

export type KeyOrder =
  | { do: 'tool'; tool: Tool }
  | { do: 'stage'; stage: Stage }
  | { do: 'nudge' | 'grow'; by: UnitPoint }
  | { do: 'box-in-middle' | 'halve' | 'same' | 'escape' | 'undo' | 'redo' | 'remove' | 'enter' | 'sharpest' }
  | { do: 'zoom'; by: 'in' | 'out' | 'all' }
  | { do: 'turn'; to: 'previous' | 'next' };

/** A hundredth of the picture at a time, as the eye follows it. */
const STEP = 0.01;
const ARROWS: Readonly<Record<string, UnitPoint>> = {
  ArrowLeft: [-STEP, 0],
  ArrowRight: [STEP, 0],
  ArrowUp: [0, -STEP],
  ArrowDown: [0, STEP],
};
const LETTERS: Readonly<Record<string, KeyOrder>> = {
  l: { do: 'tool', tool: 'look' },
  b: { do: 'tool', tool: 'rectangle' },
  p: { do: 'tool', tool: 'polygon' },
  t: { do: 'tool', tool: 'tap' },
  x: { do: 'tool', tool: 'split' },
  r: { do: 'box-in-middle' },
  h: { do: 'halve' },
  s: { do: 'same' },
  g: { do: 'sharpest' },
  '+': { do: 'zoom', by: 'in' },
  '=': { do: 'zoom', by: 'in' },
  '-': { do: 'zoom', by: 'out' },
  '0': { do: 'zoom', by: 'all' },
  PageUp: { do: 'turn', to: 'previous' },
  PageDown: { do: 'turn', to: 'next' },
  Delete: { do: 'remove' },
  Backspace: { do: 'remove' },
  Enter: { do: 'enter' },
};

/** What a key means at the bench. In a text field letters are letters: there only Alt with digits and Escape count. */
export function keyOrder(pressed: Key, isInField: boolean): KeyOrder | null {
  const { key, alt, command } = pressed;
  if (key === 'Escape') return { do: 'escape' };
  if (alt && !command) return stageOrder(/^Digit([1-5])$/.exec(pressed.code)?.[1]);
  if (isInField || alt) return null;
  if (command) return undoOrder(pressed);
  const by = ARROWS[key];
  if (by) return { do: pressed.shift ? 'grow' : 'nudge', by };
  return stageOrder(/^[1-5]$/.exec(key)?.[0]) ?? LETTERS[key.length === 1 ? key.toLowerCase() : key] ?? null;
}

function stageOrder(digit: string | undefined): KeyOrder | null {
  const stage = digit === undefined ? undefined : STAGES[Number(digit) - 1];
  return stage ? { do: 'stage', stage } : null;
}

function undoOrder({ key, shift }: Key): KeyOrder | null {
  const letter = key.toLowerCase();
  if (letter === 'y' || (letter === 'z' && shift)) return { do: 'redo' };
  return letter === 'z' ? { do: 'undo' } : null;
}
