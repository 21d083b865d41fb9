import type { StatedGrid } from '../../../contract/frame-shapes.ts';
import type { Mm } from '../../length.ts';
import { levelsOf, sun, type BoathouseSize } from './measures.ts';

const IROHA = [
  ...'いろはにほへとちりぬるをわかよたれそつねならむうゐのおくやまけふこえてあさきゆめみしゑひもせす',
];
const DIGITS = [...'〇一二三四五六七八九'];

/** The labels of a house's lines, and where its parts lie between them. */
export interface Lines {
  readonly first: readonly string[];
  readonly second: readonly string[];
  /** From eaves to eaves in half bays: 一, 又一, 二 … */
  readonly across: readonly string[];
  readonly along: readonly string[];
  readonly westmost: string;
  readonly eastmost: string;
  readonly lakeside: string;
  readonly hillside: string;
  readonly ridge: string;
  /** The slip lies behind this line, in the bay to the east wall. */
  readonly slip: string;
}

/** Throws RangeError for a house that has no ridge over a line, no room beside its slip, or more lines than names. */
export function linesOf({ bays: [along, across] }: BoathouseSize): Lines {
  if (along < 2 || along >= IROHA.length || across < 2 || across > 98 || across % 2 === 1)
    throw new RangeError(`There is no boathouse of ${along} by ${across} bays.`);
  const first = IROHA.slice(0, along + 1);
  const second = Array.from({ length: across + 1 }, (_, i) => numeral(i + 1));
  const at = (labels: readonly string[], index: number) => labels.at(index) ?? '';
  return {
    ...{ first, second },
    across: withMiddles(second),
    along: withMiddles(first),
    westmost: at(first, 0),
    eastmost: at(first, -1),
    lakeside: at(second, 0),
    hillside: at(second, -1),
    ridge: at(second, across / 2),
    slip: at(first, -2),
  };
}

export function gridOf({ first, second }: Lines, size: BoathouseSize): StatedGrid {
  const lines = (labels: readonly string[]) =>
    labels.map((label, i) => ({ label, at: sun(i * size.shaku * 10) as Mm }));
  return {
    first: { lines: lines(first), runs: 'leftward' },
    second: { lines: lines(second), runs: 'downward' },
    levels: Object.entries(levelsOf(size)).map(([label, height]) => ({ label, height: height as Mm })),
    unit: 'mm',
  };
}

function withMiddles(labels: readonly string[]): string[] {
  return labels.flatMap((label, i) => (i < labels.length - 1 ? [label, `又${label}`] : [label]));
}

/** 1 to 99: 七, 十, 十二, 二十三. */
function numeral(n: number): string {
  const [tens, ones] = [Math.floor(n / 10), n % 10];
  const ten = tens === 0 ? '' : tens === 1 ? '十' : `${DIGITS[tens] ?? ''}十`;
  return ten + (ones === 0 ? '' : (DIGITS[ones] ?? ''));
}
