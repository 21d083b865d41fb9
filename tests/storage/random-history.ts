import { randomUUID } from 'node:crypto';
import fc from 'fast-check';
import { MarkShape } from '#domain/contract/shapes';
import { STAGES, TRACK_NAMES, type Stage } from '#domain/frame/stage';
import { Failure } from '../../server/services/failure.ts';
import { markClock, withdrawClockMark } from '../../server/services/clock.ts';
import {
  changeCovering,
  closeCovering,
  planCovering,
  reopenCovering,
} from '../../server/services/coverings.ts';
import { addDevicePosition } from '../../server/services/device-position.ts';
import { datePhoto, withdrawDate } from '../../server/services/date-photo.ts';
import { writeNote } from '../../server/services/days.ts';
import { changeHouse } from '../../server/services/houses.ts';
import { acceptFindings, reopenFinding } from '../../server/services/findings.ts';
import { stateGrid, stateRequirements } from '../../server/services/frame.ts';
import {
  disputeTag,
  readyCovering,
  refuseCovering,
  stateReleaseRule,
  withdrawReady,
} from '../../server/services/holds.ts';
import { readReview } from '../../server/services/review.ts';
import { releaseCovering, withdrawRelease } from '../../server/services/release.ts';
import { linesToRelease, needsWaiver } from '#domain/record/release';
import { admitGuest, endGuest } from '../../server/services/guests.ts';
import { deleteMember, putMember } from '../../server/services/members.ts';
import {
  changeProtection,
  layProtection,
  liftProtection,
  withdrawLifting,
  withdrawProtection,
} from '../../server/services/protection.ts';
import { putTerm, removeTerm } from '../../server/services/terms.ts';
import { placeTag, supersedeTag, withdrawTag } from '../../server/services/tags.ts';
import type { StatedGrid } from '#domain/contract/frame-shapes';
import type { Mm } from '#domain/frame/length';
import type { SetOut } from '#domain/frame/set-out';
import type { Zone } from '#domain/frame/zone';
import { AKI, HARU, addPhoto, type TestRecord } from '../support/record.ts';

const LINES = ['一', '二', '三', '四', '五', '六', '七'];

function gridOf(bay: number, count: number): StatedGrid {
  const lines = (labels: readonly string[]) =>
    labels.slice(0, count).map((label, i) => ({ label, at: (i * bay) as Mm }));
  return {
    first: { lines: lines([...'いろはにほへと']), runs: 'leftward' },
    second: { lines: lines(LINES), runs: 'downward' },
    levels: [
      { label: '1F', height: 450 as Mm },
      { label: '2F', height: 3200 as Mm },
    ],
    unit: 'mm',
  };
}

/** Some lie in the frame, some only once the grid is large enough, some never. */
function setOutOf(n: number, m: number, stands: boolean): SetOut | null {
  if (n === 0) return null;
  const [from, to] = [`い${LINES[m]!}`, stands ? '' : `い${LINES[n]!}`];
  const size = { base: m * 300, top: stands ? 2700 : null, width: null, depth: null };
  return { from, to, level: '1F', ...size };
}

function wallOf(n: number, m: number): Zone {
  const over = m % 2 === 0 ? 'between-posts' : 'over-posts';
  const span = { line: 'い', from: LINES[m]!, to: LINES[n + 1]! };
  const face = (['lower', 'higher', 'both'] as const)[(n + m) % 3] ?? 'both';
  return { shape: 'wall', family: 'first', ...span, bottom: 450, top: 3000, face, over };
}

/** One act of a random history: small numbers stand for marks, photos, tags and coverings. */
export interface Act {
  readonly what:
    | 'member'
    | 'retire'
    | 'photo'
    | 'tag'
    | 'replace'
    | 'withdraw'
    | 'plan'
    | 'change'
    | 'close'
    | 'reopen'
    | 'stamp'
    | 'note'
    | 'zone'
    | 'accept'
    | 'unaccept'
    | 'first-day'
    | 'site'
    | 'device'
    | 'clock'
    | 'clock-withdraw'
    | 'date'
    | 'date-withdraw'
    | 'grid'
    | 'wall'
    | 'needs'
    | 'lay'
    | 'lay-zone'
    | 'lift'
    | 'lay-again'
    | 'never-laid'
    | 'guest'
    | 'guest-end'
    | 'term'
    | 'term-remove'
    | 'ready'
    | 'unready'
    | 'refuse'
    | 'release'
    | 'unrelease'
    | 'dispute'
    | 'rule';
  readonly n: number;
  readonly m: number;
  readonly second: boolean;
}

export const anyAct: fc.Arbitrary<Act> = fc.record({
  what: fc.constantFrom(
    ...([
      'member',
      'retire',
      'photo',
      'tag',
      'replace',
      'withdraw',
      'plan',
      'change',
      'close',
      'reopen',
      'stamp',
      'note',
      'zone',
      'accept',
      'unaccept',
      'first-day',
      'site',
      'device',
      'grid',
      'wall',
      'needs',
      'lay',
      'lay-zone',
      'lift',
      'lay-again',
      'never-laid',
      'clock',
      'clock-withdraw',
      'date',
      'date-withdraw',
      'guest',
      'guest-end',
      'term',
      'term-remove',
      'ready',
      'ready',
      'unready',
      'refuse',
      'release',
      'release',
      'unrelease',
      'dispute',
      'rule',
    ] as const),
  ),
  n: fc.nat(4),
  m: fc.nat(4),
  second: fc.boolean(),
});

/** Every history begins with some members, or no covering could ever be planned. */
export const MEMBERS: Act[] = [0, 1, 2, 3].map((n) => ({ what: 'member', n, m: 0, second: false }));

const SITES = [
  { lat: 35.0116, lon: 135.7681 },
  { lat: 35.0121, lon: 135.7681 },
  { lat: 35.0216, lon: 135.7681 },
];
const ZONES = ['Asia/Tokyo', 'Europe/Oslo', 'America/St_Johns'];
/** A kind of the program that members have, and two of the crew. */
const TERMS = ['nuki', randomUUID(), randomUUID()];
const mark = (n: number) => MarkShape.parse(`い${n}`);
const stage = (n: number): Stage => STAGES[n % 5] as Stage;

/** Plays acts through the real services; what they refuse is part of the history too. */
export async function play(record: TestRecord, house: string, acts: readonly Act[]): Promise<number> {
  const tags: string[] = [];
  const clockMarks: string[] = [];
  const coverings = [0, 1, 2, 3, 4].map(() => randomUUID());
  const releases: string[] = [];
  const protections = [0, 1].map(() => randomUUID());
  const guests = [0, 1, 2, 3, 4].map(() => randomUUID());
  let refused = 0;
  for (const act of acts) {
    try {
      await perform(record, house, act, { tags, coverings, protections, clockMarks, releases, guests });
    } catch (error) {
      if (!(error instanceof Failure)) throw error;
      refused++;
    }
  }
  return refused;
}

async function perform(
  { context }: TestRecord,
  house: string,
  { what, n, m, second }: Act,
  {
    tags,
    coverings,
    protections,
    clockMarks,
    releases,
    guests,
  }: Record<'tags' | 'coverings' | 'protections' | 'clockMarks' | 'releases' | 'guests', string[]>,
): Promise<void> {
  const who = second ? AKI : HARU;
  const covering = { house, covering: coverings[n] as string };
  const hides = [...new Set([n, m])].map((i) => ({
    mark: mark(i),
    least: second ? ('pegged' as const) : ('cut' as const),
  }));
  const facts = {
    name: `Covering ${n}`,
    kind: 'floor' as const,
    plannedDay: `2026-05-0${m + 1}`,
    hides,
    zone: null,
    except: [],
    note: '',
  };
  const protection = { house, protection: protections[n % 2] as string };
  const laid = {
    ...{ name: `Sheets ${n}`, what: 'sheet', note: '', liftingDay: second ? '2026-05-01' : null },
    ...{ zone: null, hides: hides.map((hidden) => hidden.mark), except: [] },
    laidAt: `2026-04-0${m + 1}T00:00:00.000Z`,
  };
  const region = { shape: 'rectangle' as const, x: n / 10, y: m / 10, w: 0.1 + n / 20, h: 0.2 };
  const tag = randomUUID();
  const said = {
    mark: mark(m),
    stage: stage(n + m),
    region,
    stretch: n > 2 ? { from: LINES[m]!, to: LINES[n]! } : null,
    note: second ? 'by the door' : '',
  };
  const old = tags[(n * 5 + m) % Math.max(1, tags.length)] ?? randomUUID();
  switch (what) {
    case 'member':
      await putMember(context, who, house, {
        mark: mark(n),
        kind: 'nuki',
        name: '',
        place: `bay ${m}`,
        track: null,
        note: '',
        other: { Timber: 'cedar' },
        setOut: setOutOf(n, m, second),
      });
      return;
    case 'retire':
      await deleteMember(context, who, house, mark(n));
      return;
    case 'photo':
      await addPhoto(context, house, n, {
        wallTime: second ? `2026-04-0${m + 1}T09:30:00` : null,
        position: second ? { ...SITES[n % 3]!, errorM: m === 0 ? null : 30 * m, altitudeM: null } : null,
        heading: { degrees: 80 * n, reference: m % 2 ? 'magnetic' : 'unstated' },
        model: m === 4 ? null : `Box ${m % 2}`,
      });
      return;
    case 'tag': {
      const wallTime = n === 0 ? null : `2026-04-0${n}T09:30:00`;
      const photo = await addPhoto(context, house, n, { wallTime });
      await placeTag(context, who, { house, photo, tag }, said);
      tags.push(tag);
      return;
    }
    case 'replace':
      await supersedeTag(context, who, { house, supersedes: old, tag }, said);
      tags.push(tag);
      return;
    case 'withdraw':
      await withdrawTag(context, who, { house, tag: old }, 'not this one');
      return;
    case 'plan':
      await planCovering(context, who, covering, facts);
      return;
    case 'change':
      await changeCovering(context, who, covering, { ...facts, note: 'moved' });
      return;
    case 'close':
      await closeCovering(context, who, covering, {
        closedAt: null,
        note: '',
        withoutRelease: second ? 'Nobody inspects this house.' : null,
      });
      return;
    case 'reopen':
      await reopenCovering(context, who, covering, 'said too early');
      return;
    case 'stamp':
      await context.store.write(house, null, async (writing) => {
        const stamped = { token: 'AAAA', at: `2026-04-0${n + 1}T05:00:00.000Z`, by: `Stamps ${m}` };
        const payload = { ...(await writing.ledgerState(house)), ...stamped };
        await writing.say({ kind: 'head.stamped', version: 1, payload });
      });
      return;
    case 'note':
      await writeNote(context, who, house, `2026-04-0${n + 1}`, `Note ${m}`);
      return;
    case 'accept':
    case 'unaccept': {
      const open = await context.store.read.findings(house, { limit: 500 });
      const chosen = open[(n * 5 + m) % Math.max(1, open.length)];
      if (!chosen) return;
      const { key, basis } = chosen;
      if (what === 'unaccept') await reopenFinding(context, who, house, { key, reason: 'no' });
      else await acceptFindings(context, who, house, { findings: [{ key, basis }], reason: `looked ${m}` });
      return;
    }
    case 'grid':
      await stateGrid(context, HARU, house, gridOf(second ? 910 : 1820, 3 + m));
      return;
    case 'wall':
      await changeCovering(context, who, covering, {
        ...facts,
        hides: second ? facts.hides.slice(0, 1) : [],
        zone: wallOf(n, m),
        except: m === 3 ? [mark(n)] : [],
      });
      return;
    case 'needs':
      await stateRequirements(context, HARU, house, {
        rows: [{ form: 'plaster-between-posts', kind: 'nuki', hides: second, least: null, views: 1 + m }],
      });
      return;
    case 'lay':
      await layProtection(context, who, protection, laid);
      return;
    case 'lay-zone':
      await changeProtection(context, who, protection, {
        ...laid,
        hides: second ? laid.hides.slice(0, 1) : [],
        zone: wallOf(n, m),
        except: m === 3 ? [mark(n)] : [],
      });
      return;
    case 'lift':
      await liftProtection(context, who, protection, {
        liftedAt: `2026-04-0${n + 1}T05:00:00.000Z`,
        note: '',
      });
      return;
    case 'lay-again':
      await withdrawLifting(context, who, protection, 'it lies there still');
      return;
    case 'never-laid':
      await withdrawProtection(context, who, protection, 'on another house');
      return;
    case 'zone':
      await changeHouse(context, HARU, house, { zone: ZONES[n % 3] });
      return;
    case 'first-day':
      await changeHouse(context, HARU, house, { firstDay: second ? `2026-04-0${n + 1}` : null });
      return;
    case 'site':
      await changeHouse(context, HARU, house, { site: second ? { ...SITES[n % 3]!, radiusM: 60 } : null });
      return;
    case 'device': {
      const measuredAt = `2026-04-0${m + 1}T01:00:00.000Z`;
      const photo = await addPhoto(context, house, n);
      await addDevicePosition(context, who, { house, photo }, { ...SITES[m % 3]!, errorM: n, measuredAt });
      return;
    }
    case 'clock': {
      const taken = { wallTime: `2026-03-1${n}T09:30:00`, model: `Box ${m % 2}` };
      const place = { house, photo: await addPhoto(context, house, 10 + n * 2 + (m % 2), taken), mark: tag };
      const trueTime = `2026-03-1${n}T0${m}:00:07.000Z`;
      await markClock(context, who, place, { trueTime, withinS: 5 + m, note: second ? 'phone' : '' });
      clockMarks.push(tag);
      return;
    }
    case 'clock-withdraw': {
      const clockMark = clockMarks[(n * 5 + m) % Math.max(1, clockMarks.length)] ?? randomUUID();
      await withdrawClockMark(context, who, { house, mark: clockMark }, 'the clock on the wall was wrong');
      return;
    }
    case 'date': {
      const date = {
        taken: `2026-03-2${m}T03:00:00.000Z`,
        withinS: second ? 60 : 43_200,
        reason: `Diary ${m}`,
      };
      await datePhoto(context, who, { house, photo: await addPhoto(context, house, n) }, date);
      return;
    }
    case 'date-withdraw':
      await withdrawDate(context, who, { house, photo: await addPhoto(context, house, n) }, 'wrong day');
      return;
    case 'guest': {
      const shows = second ? { mark: mark(m) } : { covering: coverings[m]! };
      const asked = { id: guests[n]!, shows, label: `Guest ${n}`, days: 1 + m };
      await admitGuest(context, HARU, house, asked);
      return;
    }
    case 'guest-end':
      await endGuest(context, HARU, { house, guest: guests[n]! }, second ? 'left' : '');
      return;
    case 'term': {
      const names = {
        kanji: second ? '横貫' : '',
        kana: '',
        romaji: '',
        en: `rail ${n}`,
        also: [`rail of bay ${m}`],
      };
      const facts = {
        family: 'rail' as const,
        track: TRACK_NAMES[m % 4]!,
        lies: 'level' as const,
        hiddenBy: [],
      };
      const term = TERMS[n % TERMS.length]!;
      await putTerm(context, who, { house, term }, { ...names, ...facts, section: null, does: '' });
      return;
    }
    case 'term-remove':
      await removeTerm(context, who, { house, term: TERMS[n % TERMS.length]! }, 'nobody says so');
      return;
    case 'ready':
      await readyCovering(context, who, covering, second ? 'ladder stands' : '');
      return;
    case 'unready':
      await withdrawReady(context, who, covering, 'rain');
      return;
    case 'refuse': {
      const lacking = m % 2 ? [{ mark: mark(n), note: 'too dark' }] : [];
      await refuseCovering(context, who, covering, { lacking, note: `Look ${m}` });
      return;
    }
    case 'release': {
      // So much has to come before it that chance alone hardly gets there.
      const view =
        (await context.store.read.covering(covering.covering)) ??
        (await planCovering(context, who, covering, facts));
      if (view.hold.state !== 'ready') await readyCovering(context, AKI, covering, '');
      const { lines } = await readReview(context, HARU, house, covering.covering);
      const members = linesToRelease(lines).map((line) => ({
        mark: line.mark,
        basis: line.basis,
        waived: needsWaiver(line) ? 'seen on site' : null,
      }));
      const request = { id: tag, note: '', members: m === 4 ? members.slice(1) : members };
      await releaseCovering(context, HARU, covering, request);
      releases.push(tag);
      return;
    }
    case 'unrelease': {
      const release = releases[(n * 5 + m) % Math.max(1, releases.length)] ?? randomUUID();
      await withdrawRelease(context, who, { house, release }, 'another wall');
      return;
    }
    case 'dispute':
      await disputeTag(context, who, house, old, `Is it ${m}?`);
      return;
    case 'rule':
      await stateReleaseRule(context, HARU, house, { fourEyes: second, reason: 'few people' });
  }
}
