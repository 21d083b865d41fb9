import type { ClosingReportInput } from '#domain/record/closing-report';

/**
 * The rules of the closing report read literally and answered by going through everything for
 * everything, millimetre by millimetre; shares nothing with the program but its input.
 */
const ORDER_OF_WORK = ['cut', 'raised', 'pegged', 'lath-on', 'plastered'];

type Tag = ClosingReportInput['tags'][number];
type Covering = ClosingReportInput['coverings'][number];
type Protection = NonNullable<ClosingReportInput['protection']>[number];

/** What is asked for of one member; the millimetres that are hidden, or null where it counts as one piece. */
interface Asked {
  covering: Covering;
  protection: readonly Protection[];
  least: string;
  views: number;
  hidden: number[] | null;
  /** From when nobody sees anything of it any more. */
  gone: string | null;
  /** Millimetres that other layers had hidden before this one. */
  before: Set<number>;
  isAllBefore: boolean;
}

export interface OracleLine {
  covering: string;
  mark: string;
  least: string;
  views: number;
  state: string;
  records: string[];
  /** Whether the record that is shown first is beyond doubt. */
  firm: boolean;
  missing: string[];
  length: number | null;
  completeAt: string | null;
  gone: string | null;
  miss: { reasons: string[]; tag: string | null } | null;
  liesUnder: string | null;
  waivedBy: string | null;
}

/** The latest moment at which the photo may have been taken. */
function latest(tag: Tag): number {
  return new Date(tag.instant ?? '').getTime() + tag.uncertaintyS * 1000;
}

function isAnswered(tag: Tag, kind: string): boolean {
  return tag.findings.filter((finding) => finding.kind === kind).some((finding) => finding.accepted !== null);
}

/** Said once more as a list, so that one that goes missing there is missed here. */
const NOTHING_MAY_CONTRADICT = `disputed stage-goes-back stages-at-once places-at-once stage-outside-track
  same-picture off-site readers-differ`.split(/\s+/);

function isContradicted(tag: Tag): boolean {
  return tag.findings.some(({ kind, accepted }) => !accepted && NOTHING_MAY_CONTRADICT.includes(kind));
}

export function isBeyondDoubt(tag: Pick<Tag, 'findings' | 'legibility' | 'datedBy'>): boolean {
  return !(tag.findings.length > 0 || tag.legibility === 'weak' || tag.datedBy === 'by-hand');
}

/** Millimetre n reaches from n to n + 1. */
function isSeenAt(tag: Tag, mm: number): boolean {
  return !tag.stretch || (tag.stretch.from <= mm && mm < tag.stretch.to);
}

/** Less than 5 mm of the hidden part is as good as none of it. */
function showsElsewhere(tag: Tag, { hidden }: Asked): boolean {
  return hidden !== null && hidden.filter((mm) => isSeenAt(tag, mm)).length < 5;
}

/** At all hours at which the photo may have been taken, or at some; the hour of the lifting lies outside. */
function layOver(tag: Tag, { laidAt, liftedAt, mark }: Protection): 'always' | 'perhaps' | 'never' {
  if (tag.instant === null || tag.mark !== mark) return 'never';
  const [laid, lifted] = [laidAt, liftedAt ?? '9999-12-31T00:00:00.000Z'].map((at) => new Date(at).getTime());
  const lies = (time: number) => time >= laid! && time < lifted!;
  const taken = new Date(tag.instant).getTime();
  const [first, last] = [taken - tag.uncertaintyS * 1000, taken + tag.uncertaintyS * 1000];
  // Every second is too many to look at: the ends, what lies beside them, and the hours between.
  const times = [first, last - 1, ...[laid!, lifted!].flatMap((end) => [end - 1, end])];
  for (let time = first; time < last; time += 3_600_000) times.push(time);
  const within = times.filter((time) => time === taken || (time >= first && time < last));
  const found = within.filter(lies).length;
  return found === 0 ? 'never' : found === within.length ? 'always' : 'perhaps';
}

/** The millimetres of what is hidden that a tag shows and nothing lay over, in runs of at least 5. */
function bare(tag: Tag, { hidden, protection }: Asked, isWrong: (lay: string) => boolean): number[] {
  const lying = protection.filter((one) => isWrong(layOver(tag, one)));
  const shown = (hidden ?? [0]).filter((mm) => hidden === null || isSeenAt(tag, mm));
  const left = shown.filter((mm) => !lying.some(({ stretch }) => !stretch || isIn(stretch, mm)));
  return lying.length === 0 || hidden === null ? left : left.filter((mm) => runAround(mm, left) >= 5);
}

const isIn = (stretch: { from: number; to: number }, mm: number) => stretch.from <= mm && mm < stretch.to;
const isPossible = (lay: string) => lay !== 'never';
const isCertain = (lay: string) => lay === 'always';

function counts(tag: Tag, asked: Asked): boolean {
  const { covering, least, gone } = asked;
  const dated = tag.instant !== null;
  const before =
    dated &&
    (gone === null ||
      latest(tag) < new Date(gone).getTime() ||
      (latest(tag) === new Date(gone).getTime() && tag.uncertaintyS > 0));
  const farEnough = ORDER_OF_WORK.indexOf(tag.stage) >= ORDER_OF_WORK.indexOf(least);
  const showsMember =
    !(covering.kind === 'plaster' && tag.stage === 'plastered') &&
    !showsElsewhere(tag, asked) &&
    bare(tag, asked, isPossible).length > 0;
  const canBeRead = isAnswered(tag, 'unreadable') || tag.legibility !== 'unreadable';
  return dated && before && farEnough && showsMember && !tag.doubt && !isContradicted(tag) && canBeRead;
}

function reasons(tag: Tag, asked: Asked): string[] {
  const { covering, least, gone } = asked;
  const said: string[] = [];
  if (showsElsewhere(tag, asked)) said.push('other-stretch');
  if (ORDER_OF_WORK.indexOf(tag.stage) < ORDER_OF_WORK.indexOf(least)) said.push('before-stage');
  if (covering.kind === 'plaster' && tag.stage === 'plastered') said.push('shows-the-covering');
  if (!showsElsewhere(tag, asked) && bare(tag, asked, isPossible).length === 0)
    said.push(bare(tag, asked, isCertain).length === 0 ? 'under-protection' : 'perhaps-under-protection');
  if (tag.instant !== null && gone !== null) {
    const closed = new Date(gone).getTime();
    if (new Date(tag.instant).getTime() >= closed) said.push('after-closing');
    else if (latest(tag) > closed) said.push('perhaps-after-closing');
  }
  if (tag.instant === null) said.push('undated');
  if (tag.doubt) said.push(tag.doubt);
  const open = tag.findings.filter(
    ({ kind, accepted }) => !accepted && NOTHING_MAY_CONTRADICT.includes(kind),
  );
  if (open.some(({ kind }) => kind === 'disputed')) said.push('disputed');
  if (open.some(({ kind }) => kind !== 'disputed')) said.push('contradicted');
  if (!isAnswered(tag, 'unreadable') && tag.legibility === 'unreadable') said.push('unreadable');
  return said;
}

/** Whether `a` is worth more than `b`: the further stage, then the later photo, then the lower id. */
function better(a: Tag, b: Tag): boolean {
  const [stageA, stageB] = [ORDER_OF_WORK.indexOf(a.stage), ORDER_OF_WORK.indexOf(b.stage)];
  if (stageA !== stageB) return stageA > stageB;
  const [timeA, timeB] = [a, b].map((t) => (t.instant === null ? -Infinity : Date.parse(t.instant)));
  if (timeA !== timeB) return (timeA ?? 0) > (timeB ?? 0);
  return a.id < b.id;
}

function nearer(a: Tag, b: Tag, asked: Asked): boolean {
  const [fewA, fewB] = [reasons(a, asked).length, reasons(b, asked).length];
  return fewA === fewB ? better(a, b) : fewA < fewB;
}

/** Millimetres of what is hidden that too few photos show, without those in runs of less than 5. */
function missingOf(asked: Asked, records: readonly Tag[]): number[] {
  const { hidden, views, before, isAllBefore } = asked;
  const shown = new Map(records.map((tag) => [tag, bare(tag, asked, isPossible)]));
  const photos = [...new Set(records.map(({ photo }) => photo))];
  const all = hidden ?? [0];
  const pieces = isAllBefore || !hidden ? all : longRuns(all.filter((mm) => !before.has(mm)));
  const unseen = pieces.filter((mm) => {
    const showing = photos.filter((photo) =>
      records.some((tag) => tag.photo === photo && shown.get(tag)?.includes(mm)),
    );
    return showing.length < views;
  });
  return hidden === null ? unseen : longRuns(unseen);
}

function longRuns(all: readonly number[]): number[] {
  return all.filter((mm) => runAround(mm, all) >= 5);
}

function runAround(mm: number, all: readonly number[]): number {
  let [low, high] = [mm, mm];
  while (all.includes(low - 1)) low--;
  while (all.includes(high + 1)) high++;
  return high - low + 1;
}

function runsOf(all: readonly number[]): string[] {
  return all
    .filter((mm) => !all.includes(mm - 1))
    .map((from) => {
      let to = from;
      while (all.includes(to)) to++;
      return `${String(from)}–${String(to)}`;
    });
}

/** The first instant by which what had been photographed was enough. */
function completeSince(asked: Asked, records: readonly Tag[]): string | null {
  const instants = records.map(({ instant }) => instant ?? '').sort();
  const enough = (instant: string) =>
    missingOf(
      asked,
      records.filter((tag) => (tag.instant ?? '') <= instant),
    ).length === 0;
  return instants.find(enough) ?? null;
}

/** The first laid of what lies now over at least 5 mm on end of what is missing. */
function lyingOver(input: ClosingReportInput, mark: string, missing: readonly number[]): string | null {
  const lies = (input.protection ?? []).filter((one) => {
    const isLaid = one.mark === mark && one.laidAt <= input.asOf;
    const { stretch } = one;
    if (!isLaid || (one.liftedAt !== null && one.liftedAt <= input.asOf)) return false;
    const under = missing.filter((mm) => !stretch || isIn(stretch, mm));
    return stretch ? under.some((mm) => runAround(mm, under) >= 5) : true;
  });
  const order = ({ laidAt, id }: Protection) => `${laidAt} ${id}`;
  return lies.sort((a, b) => (order(a) < order(b) ? -1 : 1))[0]?.id ?? null;
}

/** The release that accepts all of what is missing, at this stage and with so few photos; null where none does. */
function acceptedBy(mark: string, asked: Asked, lacking: readonly number[]): string | null {
  const said = (asked.covering.waived ?? []).find((one) => (one.mark as string) === mark);
  if (!said || asked.views > said.views) return null;
  const { closedAt } = asked.covering;
  if (closedAt !== null && Date.parse(said.waiver.at) > Date.parse(closedAt)) return null;
  if (ORDER_OF_WORK.indexOf(asked.least) > ORDER_OF_WORK.indexOf(said.least)) return null;
  const parts = said.missing.length > 0 ? said.missing : said.stretch ? [said.stretch] : null;
  if (parts === null) return said.waiver.release;
  // Of a member without a length nobody can tell what a part of it is.
  if (asked.hidden === null) return null;
  const beyond = lacking.filter((mm) => !parts.some((part) => isIn(part, mm)));
  return longRuns(beyond).length === 0 ? said.waiver.release : null;
}

const isTakenBack = ({ waived = [] }: Covering, mark: string) =>
  waived.some((one) => (one.mark as string) === mark && one.waiver.takenBack !== null);

function oracleLine(input: ClosingReportInput, mark: string, asked: Asked): OracleLine {
  const { covering, least, views, hidden } = asked;
  const own: Tag[] = [];
  for (const tag of input.tags) if (tag.mark === mark) own.push(tag);
  const records = own.filter((tag) => counts(tag, asked));
  const missing = missingOf(asked, records);
  const member = input.members.find((m) => m.mark === mark);
  let state = 'gap';
  if (asked.gone !== null) state = 'lost';
  if (asked.isAllBefore) state = 'hidden-before';
  if (missing.length === 0) state = 'on-record';
  if (member?.retired) state = 'retired';
  const isMissed = state === 'gap' || state === 'lost';
  const waivedBy = isMissed ? acceptedBy(mark, asked, missing) : null;
  if (waivedBy !== null && !isTakenBack(covering, mark)) state = 'waived';
  const isPart = hidden !== null && missing.length < hidden.length;
  const firmOnes = records.filter(isBeyondDoubt);
  const shown = firmOnes.length > 0 ? firmOnes : records;
  const best = shown.find((a) => shown.every((b) => a === b || better(a, b)));
  const nearest = own.find((a) => own.every((b) => a === b || nearer(a, b, asked)));
  let miss: OracleLine['miss'] = { reasons: ['no-photo'], tag: null };
  if (nearest) miss = { reasons: reasons(nearest, asked), tag: nearest.id };
  const isOnlyDoubted = own.some((tag) => reasons(tag, asked).join() === 'disputed');
  const short = isPart ? 'part-only' : 'too-few-views';
  if (best) miss = { reasons: isOnlyDoubted ? [short, 'disputed'] : [short], tag: best.id };
  return {
    ...{ covering: covering.id, mark, least, views, state },
    records: records.map(({ id }) => id).sort(),
    firm: firmOnes.length > 0,
    missing: isMissed && isPart ? runsOf(missing) : [],
    length: hidden?.length ?? member?.axis?.length ?? null,
    completeAt: missing.length === 0 ? completeSince(asked, records) : null,
    gone: asked.gone,
    miss: isMissed ? miss : null,
    liesUnder: state === 'gap' ? lyingOver(input, mark, missing) : null,
    waivedBy,
  };
}

/** Of a member without a length: longer than any part of one, to tell whole from part. */
const ONE_PIECE = Array.from({ length: 40 }, (_, i) => i);

/** The millimetres that a covering hides of a member, if it does. */
function hiddenBy(input: ClosingReportInput, covering: Covering, mark: string): number[] | undefined {
  const last = covering.hides.filter((h) => h.mark === mark).at(-1);
  if (!last) return undefined;
  const end = input.members.find((member) => member.mark === mark)?.axis?.length;
  const stretch = last.stretch ?? (end === undefined ? null : { from: 0, to: end });
  if (!stretch) return ONE_PIECE;
  return Array.from({ length: stretch.to - stretch.from }, (_, i) => stretch.from + i);
}

const lineOf = ({ zone }: Covering) => (zone?.shape === 'wall' ? zone.line : null);
const MOMENTS = [1, 2, 3, 4].map((day) => `2026-04-0${String(day)}T03:00:00.000Z`);

/** All zones of a line share a bay. Goes from moment to moment until neither side shows the millimetre. */
function goneSince(
  mm: number,
  layers: readonly { covering: Covering; hidden: ReadonlySet<number> }[],
): string | null {
  const over = layers.filter(({ hidden }) => hidden.has(mm)).map(({ covering }) => covering);
  return (
    MOMENTS.find((moment) =>
      ['lower', 'higher'].every((side) =>
        over.some(({ closedAt, zone }) => {
          const face = zone?.shape === 'wall' ? zone.face : 'both';
          return closedAt !== null && closedAt <= moment && face !== (side === 'lower' ? 'higher' : 'lower');
        }),
      ),
    ) ?? null
  );
}

function whenGone(
  input: ClosingReportInput,
  covering: Covering,
  mark: string,
): Pick<Asked, 'gone' | 'before' | 'isAllBefore'> {
  const own = hiddenBy(input, covering, mark) ?? [];
  const others = input.coverings
    .filter((c) => c !== covering && lineOf(c) !== null && lineOf(c) === lineOf(covering))
    .flatMap((c) => {
      const hidden = hiddenBy(input, c, mark);
      return hidden ? [{ covering: c, hidden: new Set(hidden) }] : [];
    });
  const all = [...others, { covering, hidden: new Set(own) }];
  const before = new Set(
    own.filter((mm) => {
      const earlier = goneSince(mm, others);
      return earlier !== null && (covering.closedAt === null || earlier < covering.closedAt);
    }),
  );
  const rest = before.size === 0 ? own : longRuns(own.filter((mm) => !before.has(mm)));
  const last = (moments: (string | null)[]) =>
    moments
      .flatMap((at) => at ?? [])
      .sort()
      .at(-1) ?? null;
  if (rest.length === 0)
    return { gone: last([...before].map((mm) => goneSince(mm, others))), before, isAllBefore: true };
  const moments = rest.map((mm) => goneSince(mm, all));
  const isOpen = longRuns(rest.filter((_, i) => moments[i] === null)).length > 0;
  return { gone: isOpen ? null : last(moments), before, isAllBefore: false };
}

export function oracleLines(input: ClosingReportInput): OracleLine[] {
  const lines: OracleLine[] = [];
  for (const covering of input.coverings)
    for (const mark of new Set(input.coverings.flatMap((c) => c.hides.map((h) => h.mark)))) {
      const hides = covering.hides.filter((h) => h.mark === mark);
      const last = hides.at(-1);
      if (!last) continue;
      const least = [...ORDER_OF_WORK].reverse().find((stage) => hides.some((h) => h.least === stage)) ?? '';
      const end = input.members.find((member) => member.mark === mark)?.axis?.length;
      const stretch = last.stretch ?? (end === undefined ? null : { from: 0, to: end });
      const hidden = stretch
        ? Array.from({ length: stretch.to - stretch.from }, (_, i) => stretch.from + i)
        : null;
      const { protection = [] } = input;
      const asked = { covering, protection, least, views: last.views ?? 1, hidden };
      lines.push(oracleLine(input, mark, { ...asked, ...whenGone(input, covering, mark) }));
    }
  return lines;
}
