import type { ClosingReportInput } from '#domain/record/closing-report';

/**
 * The rules of the closing report read literally and answered by going through everything for
 * everything; shares nothing with the program but its input.
 */
const ORDER_OF_WORK = ['cut', 'raised', 'pegged', 'lath-on', 'plastered'];

type Tag = ClosingReportInput['tags'][number];
type Covering = ClosingReportInput['coverings'][number];

export interface OracleLine {
  covering: string;
  mark: string;
  least: string;
  state: string;
  records: string[];
  /** Whether the record that is shown first is beyond doubt. */
  firm: boolean;
  miss: { reasons: string[]; tag: string | null } | null;
}

/** The latest moment at which the photo may have been taken. */
function latest(tag: Tag): number {
  return new Date(tag.instant ?? '').getTime() + tag.uncertaintyS * 1000;
}

function isAnswered(tag: Tag, kind: string): boolean {
  return tag.findings.filter((finding) => finding.kind === kind).some((finding) => finding.accepted !== null);
}

/** Said once more as a list, so that one that goes missing there is missed here. */
const NOTHING_MAY_CONTRADICT = `stage-goes-back stages-at-once places-at-once stage-outside-track
  same-picture off-site readers-differ`.split(/\s+/);

function isContradicted(tag: Tag): boolean {
  return tag.findings.some(({ kind, accepted }) => !accepted && NOTHING_MAY_CONTRADICT.includes(kind));
}

export function isBeyondDoubt(tag: Pick<Tag, 'findings' | 'legibility' | 'datedBy'>): boolean {
  return !(tag.findings.length > 0 || tag.legibility === 'weak' || tag.datedBy === 'by-hand');
}

function counts(tag: Tag, covering: Covering, least: string): boolean {
  const dated = tag.instant !== null;
  const before =
    dated &&
    (covering.closedAt === null ||
      latest(tag) < new Date(covering.closedAt).getTime() ||
      (latest(tag) === new Date(covering.closedAt).getTime() && tag.uncertaintyS > 0));
  const farEnough = ORDER_OF_WORK.indexOf(tag.stage) >= ORDER_OF_WORK.indexOf(least);
  const showsMember = !(covering.kind === 'plaster' && tag.stage === 'plastered');
  const canBeRead = isAnswered(tag, 'unreadable') || tag.legibility !== 'unreadable';
  return dated && before && farEnough && showsMember && !tag.doubt && !isContradicted(tag) && canBeRead;
}

function reasons(tag: Tag, covering: Covering, least: string): string[] {
  const said: string[] = [];
  if (ORDER_OF_WORK.indexOf(tag.stage) < ORDER_OF_WORK.indexOf(least)) said.push('before-stage');
  if (covering.kind === 'plaster' && tag.stage === 'plastered') said.push('shows-the-covering');
  if (tag.instant !== null && covering.closedAt !== null) {
    const closed = new Date(covering.closedAt).getTime();
    if (new Date(tag.instant).getTime() >= closed) said.push('after-closing');
    else if (latest(tag) > closed) said.push('perhaps-after-closing');
  }
  if (tag.instant === null) said.push('undated');
  if (tag.doubt) said.push(tag.doubt);
  if (isContradicted(tag)) said.push('contradicted');
  if (!isAnswered(tag, 'unreadable') && tag.legibility === 'unreadable') said.push('unreadable');
  return said;
}

/** Whether `a` is a nearer miss than `b`. */
function nearer(a: Tag, b: Tag, covering: Covering, least: string): boolean {
  const [fewA, fewB] = [reasons(a, covering, least).length, reasons(b, covering, least).length];
  if (fewA !== fewB) return fewA < fewB;
  const [stageA, stageB] = [ORDER_OF_WORK.indexOf(a.stage), ORDER_OF_WORK.indexOf(b.stage)];
  if (stageA !== stageB) return stageA > stageB;
  const [timeA, timeB] = [a, b].map((t) => (t.instant === null ? -Infinity : Date.parse(t.instant)));
  if (timeA !== timeB) return (timeA ?? 0) > (timeB ?? 0);
  return a.id < b.id;
}

export function oracleLines(input: ClosingReportInput): OracleLine[] {
  const lines: OracleLine[] = [];
  for (const covering of input.coverings)
    for (const mark of new Set(input.coverings.flatMap((c) => c.hides.map((h) => h.mark)))) {
      const asked = covering.hides.filter((h) => h.mark === mark).map((h) => h.least);
      if (asked.length === 0) continue;
      const least = [...ORDER_OF_WORK].reverse().find((stage) => asked.some((s) => s === stage)) ?? '';
      const own: Tag[] = [];
      for (const tag of input.tags) if (tag.mark === mark) own.push(tag);
      const records = own.filter((tag) => counts(tag, covering, least)).map((tag) => tag.id);
      const retired = input.members.some((m) => m.mark === mark && m.retired);
      let state = 'gap';
      if (covering.closedAt !== null) state = 'lost';
      if (records.length > 0) state = 'on-record';
      if (retired) state = 'retired';
      const nearest = own.find((a) => own.every((b) => a === b || nearer(a, b, covering, least)));
      const miss = nearest
        ? { reasons: reasons(nearest, covering, least), tag: nearest.id }
        : { reasons: ['no-photo'], tag: null };
      lines.push({
        covering: covering.id,
        mark,
        least,
        state,
        records: records.sort(),
        firm: own.some((tag) => records.includes(tag.id) && isBeyondDoubt(tag)),
        miss: state === 'gap' || state === 'lost' ? miss : null,
      });
    }
  return lines;
}
