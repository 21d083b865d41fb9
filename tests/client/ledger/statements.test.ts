import { describe, expect, test } from 'vitest';
import { STATEMENT_KINDS, type Statement, type StatementKind } from '#domain/ledger/statements';
import { statementSentence } from '../../../client/screens/ledger/statement-sentence.ts';
import { statementTarget } from '../../../client/screens/ledger/statement-target.ts';
import { LANGUAGES, wordsOf } from '../words.ts';

const region = { shape: 'rectangle', x: 0, y: 0, w: 1, h: 1 };
const person = { id: 'p', name: 'Sato' };
const house = { name: '桂の家', zone: 'Asia/Tokyo', firstDay: null, site: null };
const member = { mark: 'い三', kind: '貫', name: '', place: '', track: null, note: '', other: {} };
const tag = { mark: 'い三', stage: 'pegged', region, note: '', tag: 't', photo: 'PHOTO' };
const covering = {
  covering: 'COV',
  name: 'North wall',
  kind: 'plaster',
  plannedDay: '2026-04-20',
  hides: [{ mark: 'い三', least: 'pegged' }],
  note: '',
};
const laid = {
  protection: 'LAID',
  name: 'North sills',
  what: 'sheet, boards',
  zone: null,
  hides: ['い三'],
  except: [],
  laidAt: '2026-04-20T03:00:00.000Z',
  liftingDay: null,
  note: '',
};
const term = {
  also: [],
  family: 'rail',
  track: 'wall',
  lies: 'level',
  section: null,
  hiddenBy: [],
  does: '',
};
const source = { fileName: '部材.csv', sha256: '0'.repeat(64) };

/** A payload for each kind, and what its sentence must name. */
const CASES: Record<StatementKind, readonly [payload: object, names: string[], target: string | null]> = {
  'house.created': [house, ['桂の家'], null],
  'house.changed': [house, ['桂の家', 'Asia/Tokyo'], null],
  'grid.stated': [
    {
      first: { lines: [{ label: 'い' }, { label: 'ほ' }] },
      second: { lines: [{ label: '一' }, { label: '七' }] },
      levels: [{ label: '1F' }],
    },
    ['い', 'ほ', '一', '七', '1F'],
    '/houses/h/grid',
  ],
  'requirements.stated': [{ rows: [{}, {}, {}] }, ['3'], '/houses/h/grid'],
  'head.stamped': [
    { size: 12, head: '0'.repeat(64), token: '', at: '2026-04-20T03:00:00.000Z', by: 'Stamps 1' },
    ['12', 'Stamps 1'],
    null,
  ],
  'role.granted': [{ person, role: 'inspector' }, ['Sato'], null],
  'role.withdrawn': [{ person }, ['Sato'], null],
  'guest.admitted': [
    { guest: 'g', shows: { mark: 'い三' }, label: 'Family', until: '2026-05-01T03:00:00.000Z' },
    ['い三', 'Family', '12:00'],
    '/houses/h/people',
  ],
  'guest.ended': [{ guest: 'g', reason: 'sent on' }, ['sent on'], '/houses/h/people'],
  'password.link-made': [{ person, until: '2026-05-01T03:00:00.000Z' }, ['Sato', '12:00'], null],
  'password.renewed': [{ person, linkBy: { id: 'k', name: 'Tanaka' } }, ['Sato', 'Tanaka'], null],
  'schedule.imported': [
    { source, added: [member, member], changed: [member], retired: [], badRows: 7 },
    ['部材.csv', '2', '1', '0', '7'],
    '/houses/h/members',
  ],
  'member.entered': [member, ['い三', '貫'], '/houses/h/members/%E3%81%84%E4%B8%89'],
  'member.retired': [{ mark: 'い三' }, ['い三'], '/houses/h/members/%E3%81%84%E4%B8%89'],
  'member.removed': [{ mark: 'い三' }, ['い三'], null],
  'photo.added': [{ fileName: 'a.jpg', photo: 'PHOTO' }, ['a.jpg'], '/houses/h/photos/PHOTO'],
  'photo.position-added': [
    { photo: 'PHOTO', lat: 35.01, lon: 135.77, errorM: 12, measuredAt: '2026-04-01T01:00:00.000Z' },
    ['35.01000', '135.77000', '12', '10:00'],
    '/houses/h/photos/PHOTO',
  ],
  'photo.dated': [
    { photo: 'PHOTO', taken: '2026-04-03T05:20:00.000Z', withinS: 3600, reason: 'site diary' },
    ['14:20', 'site diary'],
    '/houses/h/photos/PHOTO',
  ],
  'photo.dating-withdrawn': [
    { photo: 'PHOTO', reason: 'wrong day' },
    ['wrong day'],
    '/houses/h/photos/PHOTO',
  ],
  'clock.marked': [
    {
      mark: 'm',
      photo: 'PHOTO',
      camera: { make: 'Maker', model: 'Box 2', serial: null },
      shown: { wallTime: '2026-04-03T14:57:12', offsetMinutes: null },
      trueTime: '2026-04-03T05:20:00.000Z',
      withinS: 60,
      note: '',
    },
    ['Maker Box 2', '14:57:12', '14:20'],
    '/houses/h/photos/PHOTO',
  ],
  'clock.withdrawn': [
    { mark: 'm', camera: { make: null, model: 'Box 2', serial: '7' }, reason: 'wrong clock' },
    ['Box 2', 'wrong clock'],
    '/houses/h/cameras',
  ],
  'tag.placed': [tag, ['い三'], '/houses/h/photos/PHOTO'],
  'tag.superseded': [
    { ...tag, supersedes: 's', was: 'ろ四', stretch: { from: '二', to: '五' } },
    ['い三', 'ろ四', '二', '五'],
    '/houses/h/photos/PHOTO',
  ],
  'tag.withdrawn': [{ ...tag, reason: 'wrong wall' }, ['い三', 'wrong wall'], '/houses/h/photos/PHOTO'],
  'tag.disputed': [{ ...tag, reason: 'that is い四' }, ['い三', 'that is い四'], '/houses/h/photos/PHOTO'],
  'covering.planned': [covering, ['North wall', '1'], '/houses/h/coverings/COV'],
  'covering.changed': [covering, ['North wall'], '/houses/h/coverings/COV'],
  'covering.closed': [
    { covering: 'COV', closedAt: '2026-04-20T03:00:00.000Z', note: 'dry', release: null, without: 'rain' },
    ['East wall', '12:00', 'rain', 'dry'],
    '/houses/h/coverings/COV',
  ],
  'covering.ready': [
    { covering: 'COV', note: 'ladder stands' },
    ['East wall', 'ladder stands'],
    '/houses/h/coverings/COV',
  ],
  'covering.ready-withdrawn': [
    { covering: 'COV', reason: 'rain' },
    ['East wall', 'rain'],
    '/houses/h/coverings/COV',
  ],
  'covering.refused': [
    { covering: 'COV', lacking: [{ mark: 'い三', note: '' }], note: 'too dark' },
    ['East wall', 'い三', 'too dark'],
    '/houses/h/coverings/COV',
  ],
  'covering.released': [
    {
      ...{ covering: 'COV', release: 'REL', head: { size: 41, hash: '0'.repeat(64) } },
      ...{ hides: [], waived: [{ mark: 'い三', reason: 'seen on site' }], note: 'dry' },
    },
    ['East wall', 'い三', 'seen on site', 'dry'],
    '/houses/h/releases/REL',
  ],
  'release.withdrawn': [
    { covering: 'COV', release: 'REL', reason: 'wrong wall' },
    ['East wall', 'wrong wall'],
    '/houses/h/releases/REL',
  ],
  'release-rule.stated': [{ fourEyes: false, reason: 'I build alone' }, ['I build alone'], null],
  'covering.reopened': [
    { covering: 'COV', reason: 'too early' },
    ['East wall', 'too early'],
    '/houses/h/coverings/COV',
  ],
  'protection.laid': [laid, ['North sills', 'sheet, boards', '12:00'], '/houses/h/coverings'],
  'protection.changed': [laid, ['North sills', 'sheet, boards', '12:00'], '/houses/h/coverings'],
  'protection.lifted': [
    { protection: 'LAID', liftedAt: '2026-04-22T03:00:00.000Z', note: '' },
    ['South sills', '12:00'],
    '/houses/h/coverings',
  ],
  'protection.lifting-withdrawn': [
    { protection: 'LAID', reason: 'wrong side' },
    ['South sills', 'wrong side'],
    '/houses/h/coverings',
  ],
  'protection.withdrawn': [
    { protection: 'GONE', reason: 'never laid' },
    ['never laid'],
    '/houses/h/coverings',
  ],
  'findings.accepted': [
    {
      findings: [
        {
          key: 'k',
          kind: 'off-site',
          basis: '0'.repeat(64),
          photos: ['PHOTO'],
          marks: ['い三'],
          covering: null,
        },
      ],
      reason: 'the workshop',
    },
    ['い三', 'the workshop'],
    '/houses/h/findings',
  ],
  'finding.reopened': [
    {
      key: 'k',
      kind: 'off-site',
      photos: ['PHOTO'],
      marks: ['い三'],
      covering: null,
      reason: 'looked again',
    },
    ['い三', 'looked again'],
    '/houses/h/findings',
  ],
  'term.entered': [
    { ...term, term: 'nuki', kanji: '横貫', kana: 'よこぬき', romaji: 'yokonuki', en: 'cross rail' },
    ['横貫', '貫'],
    '/houses/h/lexicon/nuki',
  ],
  'term.removed': [
    { term: 'nuki', was: '横貫', reason: 'nobody says so' },
    ['横貫', 'nobody says so'],
    '/houses/h/lexicon',
  ],
  'note.written': [{ day: '2026-04-01', text: 'rain' }, ['2026'], '/houses/h/days/2026-04-01'],
};
const protections = new Map([['LAID', 'South sills']]);
const entry = (kind: string, payload: unknown) => ({ kind, payload }) as Statement;

describe.each(LANGUAGES)('told in %s', async (lang) => {
  const t = await wordsOf(lang);
  const telling = { t, lang, zone: 'Asia/Tokyo', coverings: new Map([['COV', 'East wall']]), protections };
  test.each(STATEMENT_KINDS)('%s', (kind) => {
    const [payload, names] = CASES[kind];
    const sentence = statementSentence(telling, entry(kind, payload));
    for (const name of names) expect(sentence).toContain(name);
    expect(sentence).not.toMatch(/\{\{|undefined|ledger\.|common\.|protection\./);
    expect(sentence).not.toContain(kind);
    // The ledger speaks in one form, 〜した and not 〜しました, and in sentences. Common practice of site diaries.
    if (lang === 'ja') expect(sentence).not.toMatch(/(?:まし|ませ|です|ます)/u);
    if (lang === 'ja' && !sentence.includes('：')) expect(sentence).toMatch(/。$/u);
  });
  test('the details of a house say its position and first day, or that there is none', () => {
    const site = { lat: 35.01163, lon: 135.76812, radiusM: 80 };
    for (const kind of ['house.created', 'house.changed'] as const) {
      const full = statementSentence(telling, entry(kind, { ...house, firstDay: '2026-04-01', site }));
      for (const part of ['35.01163', '135.76812', '80 m', '2026']) expect(full).toContain(part);
      const bare = statementSentence(telling, entry(kind, house));
      const none = [t('ledger.noFirstDay'), t('ledger.noSite')];
      for (const words of none) {
        expect(bare).toContain(words);
        expect(full).not.toContain(words);
      }
    }
  });
  test('what a zone hides is no number of members', () => {
    const zone = { shape: 'flat', corners: ['い一', 'ろ二'], bottom: 0, top: 300 };
    const inZone = statementSentence(telling, entry('covering.planned', { ...covering, zone, hides: [] }));
    expect(inZone).toContain(t('ledger.say.covering.inZone'));
    expect(inZone).not.toMatch(/\b0 members|0本/);
    const both = statementSentence(telling, entry('covering.planned', { ...covering, zone }));
    expect(both).toMatch(lang === 'en' ? /1 member and what lies in its zone/ : /部材 1本と範囲内の部材/);
  });
  test('what was accepted is not put in a row with the marks that it is about', () => {
    const of = (marks: string[]) => ({ key: 'k', kind: 'off-site', photos: [], marks, covering: null });
    const findings = [of(['に三']), of(['ろ一'])];
    const said = statementSentence(telling, entry('findings.accepted', { findings, reason: 'seen' }));
    expect(said).toContain(
      lang === 'en' ? ': taken off site (に三 and ろ一).' : '：現場の外での撮影（に三、ろ一）。',
    );
    const many = [of(['い一', 'い二', 'い三', 'い四'])];
    const short = statementSentence(telling, entry('findings.accepted', { findings: many, reason: 'seen' }));
    expect(short).not.toContain('い一');
  });
  test('a doubt is answered, not accepted', () => {
    const of = (marks: string[]) => ({ key: 'k', kind: 'disputed', photos: [], marks, covering: null });
    const said = statementSentence(
      telling,
      entry('findings.accepted', { findings: [of(['に三'])], reason: 'r' }),
    );
    expect(said).toContain(
      lang === 'en' ? 'Answered the doubt of a tag: に三.' : 'に三 の記入への疑義に答えた。',
    );
    const many = [of(['い一', 'い二', 'い三', 'い四'])];
    const short = statementSentence(telling, entry('findings.accepted', { findings: many, reason: 'r' }));
    expect(short).not.toContain('い一');
  });
  test('a kind of a later version is named, not hidden', () => {
    expect(statementSentence(telling, entry('beam.sung', {}))).toContain('beam.sung');
    expect(statementSentence(telling, entry('role.granted', null))).toContain('role.granted');
  });
  test('a withdrawal without a reason says none', () => {
    const sentence = statementSentence(telling, entry('tag.withdrawn', { ...tag, reason: ' ' }));
    expect(sentence).not.toMatch(/Reason|理由/);
  });
});

test.each(STATEMENT_KINDS)('%s leads to the screen that shows it', (kind) => {
  const [payload, , target] = CASES[kind];
  expect(statementTarget('h', entry(kind, payload))).toBe(target);
});
