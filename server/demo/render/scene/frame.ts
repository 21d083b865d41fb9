import type { Axis, Point } from '#domain/frame/set-out';
import { addBlob, addBox, addSheet, stick } from '../mesh/shapes.ts';
import { layered } from '../noise.ts';
import { boxOfMember, pointIn, type OrientedBox } from '../oriented-box.ts';
import { addScaled, sub, unit, type Vec } from '../vec.ts';
import type { HouseState, StandingMember } from './house-state.ts';
import { put, some, type Site } from './site.ts';

/** The frame itself: the members, each with its index, and what belongs to them and has no mark. */
export function addFrame(site: Site, { members, stones, sheets }: HouseState): void {
  // First, so that they lie alike whatever stands on them.
  for (const axis of stones) addStone(site, axis);
  for (const [index, member] of members.entries()) {
    const box = boxOfMember(member.axis);
    const tone = toneOf(member.mark);
    addBox(site.mesh, box, { material: 'wood', member: index, tone });
    for (const tail of tailsOf(member)) addBox(site.mesh, tail, { material: 'wood', tone });
    if (sheets.includes(member.mark)) hang(site, box);
  }
  for (const rail of members.filter(isWedged)) wedge(site, rail, members);
}

/** The same piece has the same colour in every picture. */
function toneOf(mark: string): number {
  const sum = [...mark].reduce(
    (hash, char) => Math.imul(hash ^ (char.codePointAt(0) ?? 0), 16_777_619),
    0x811c9dc5,
  );
  return (Math.imul(sum ^ (sum >>> 15), 0x2c1b3c6d) >>> 0) / 4294967296;
}

const at = ({ x, y, z }: Point): Vec => [x, y, z];

/** How far pieces go on past the ends that the schedule has: over the eaves and over the gables. */
const TAILS_MM: Readonly<Record<string, { readonly start: number; readonly end: number }>> = {
  taruki: { start: 480, end: 0 },
  keta: { start: 330, end: 330 },
  moya: { start: 330, end: 330 },
  munagi: { start: 330, end: 330 },
};

function tailsOf({ kind, axis }: StandingMember): OrientedBox[] {
  const tails = TAILS_MM[kind ?? ''];
  if (!tails) return [];
  const box = boxOfMember(axis);
  const along = box.axes[0];
  const tail = (end: Point, towards: number, long: number): OrientedBox => ({
    middle: addScaled(at(end), along, (towards * long) / 2),
    axes: box.axes,
    half: [long / 2, box.half[1], box.half[2]],
  });
  return [tail(axis.start, -1, tails.start), tail(axis.end, 1, tails.end)].filter(({ half }) => half[0] > 0);
}

function addStone(site: Site, { start, width }: Axis): void {
  const { random } = site;
  const size = width > 110 ? 1 : 0.72;
  const own = random.next();
  const high = start.z - 30;
  addBlob(
    site.mesh,
    {
      middle: [start.x + random.about(20), start.y + random.about(20), 30],
      radii: [random.between(210, 270) * size, random.between(200, 260) * size, high],
      segments: Math.max(6, Math.round(14 * site.detail)),
      reach: ([x, y, z]) => 0.83 + 0.36 * layered(x * 1.5 + own * 91, y * 1.5 + own * 17, z * 1.5, 3),
      flatTop: 1,
    },
    { material: 'stone', tone: own },
  );
}

const isWedged = ({ kind, axis, stage }: StandingMember) =>
  kind !== null && kind.endsWith('nuki') && axis.runs === 'level' && stage !== 'raised';

/** A wedge over the rail at either side of each post that it goes through. */
function wedge(site: Site, { axis }: StandingMember, members: readonly StandingMember[]): void {
  const along = unit(sub(at(axis.end), at(axis.start)));
  for (const { axis: post } of members.filter((other) => isThrough(other, axis)))
    for (const side of [-1, 1]) {
      const foot: Vec = [post.start.x, post.start.y, axis.start.z + axis.depth / 2 + 9];
      const from = addScaled(foot, along, side * (post.width / 2 - 30));
      if (!isOver(axis, addScaled(foot, along, side * post.width))) continue;
      put(site, stick(from, addScaled(from, along, side * 75), [14, 18]), 'wood');
    }
}

/** A rail that ends in its post has no other side. */
function isOver({ start, end, length }: Axis, [x, y]: Vec): boolean {
  return Math.hypot(x - start.x, y - start.y) < length && Math.hypot(x - end.x, y - end.y) < length;
}

function isThrough({ axis: post }: StandingMember, { start, end, length }: Axis): boolean {
  if (post.runs !== 'upright' || start.z < post.start.z || start.z > post.end.z) return false;
  const reach = Math.hypot(post.start.x - start.x, post.start.y - start.y);
  const rest = Math.hypot(post.start.x - end.x, post.start.y - end.y);
  return Math.abs(reach + rest - length) < 2;
}

const SHEET_DROP_MM = 520;

/** A blue sheet thrown over a piece that lies: down both sides, with folds. */
function hang(site: Site, box: OrientedBox): void {
  const [long, wide, high] = box.half;
  const reach = Math.min(long, 900);
  const own = site.random.next() * 50;
  const at = (u: number, v: number): Vec => {
    const along = (u - 0.5) * 2 * reach;
    const across = (v - 0.5) * 2 * (SHEET_DROP_MM + wide);
    const drop = Math.max(0, Math.abs(across) - wide);
    const fold = 55 * (layered(along / 240 + own, drop / 700, 3, 3) - 0.4) * (0.15 + drop / SHEET_DROP_MM);
    const side = Math.sign(across) * (Math.min(Math.abs(across), wide + 8) + Math.max(0, fold) + 6);
    return pointIn(box, [along + 30 * Math.sin(drop / 150 + own), side, high + 8 - drop]);
  };
  const steps = Math.max(16, Math.round(70 * site.detail));
  addSheet(site.mesh, { columns: steps, rows: steps, at }, some(site, 'tarp'));
}
