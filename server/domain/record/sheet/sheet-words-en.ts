import type { SheetWords } from './sheet-words.ts';

export const SHEET_WORDS_EN: SheetWords = {
  title: (covering) => `Release sheet: ${covering}`,
  withdrawn: ({ who, when, reason }) =>
    `This release does not stand. ${who} took it back on ${when}: ${reason}`,
  ended: ({ who, when }) =>
    `This release does not stand any more. What it rests on had changed, and ${who} said on ${when} that the covering is ready to be inspected again.`,
  notForAll: ({ marks, when }) =>
    `As of ${when}, this release stands, but not for ${marks.join(', ')}: what is hidden or on record of that is otherwise now. It is to be inspected anew.`,
  fact: {
    house: 'House',
    covering: 'Covering',
    released: 'Released by',
    keeper: 'Keeper of the record',
    times: 'Times',
    rule: 'Two persons',
    note: 'Note',
    number: 'Release number',
    entry: 'Ledger entry',
    head: 'Tree head after it',
  },
  covering: (name, kind) => `${name} (${kind})`,
  said: ({ who, when }) => `${who}, ${when}`,
  person: (name, role) => `${name} (${role})`,
  role: {
    owner: 'keeper of the record',
    carpenter: 'carpenter',
    inspector: 'inspector',
    builder: 'builder',
  },
  zone: ({ name, offset }) => `${name} (${offset})`,
  fourEyes: 'Nobody could release what they alone recorded, or said themselves to be ready.',
  twoEyes: 'The house did without the rule of two persons: people could release what they alone recorded.',
  noNote: 'none',
  entry: (seq, size) =>
    `No. ${seq + 1}. It rests on the ${size} ${size === 1 ? 'entry' : 'entries'} before it.`,
  check:
    'To check this release: the page says what can be checked, and how. With the archive of the house it checks the three numbers above and tells this release as the ledger says it; it reads the archive on your device and sends nothing of it.',
  caution:
    'This release is the word of whoever gave it within this record. It does not replace an inspection that the ' +
    'law requires, such as the interim and final inspections (中間検査・完了検査) of the Building Standards Act in ' +
    'Japan. Local codes and licensed practice decide what must be inspected before it is covered, and by whom. ' +
    'A member on record is not a member found sound.',
  waived: {
    heading: 'Accepted without a record',
    none: 'No member was accepted without a record.',
    lead: (who) => `Accepted by ${who}, each by name and with a reason.`,
  },
  refused: {
    heading: 'Refused before',
    lead: 'What was missing when the covering was reviewed earlier.',
    lacks: (mark, note) => (note === '' ? mark : `${mark}: ${note}`),
  },
  members: {
    heading: (count) => `What it hides: ${count} ${count === 1 ? 'member' : 'members'}`,
    lead: 'With the records that counted when the covering was released. Times of photos are as they are worked out today.',
  },
  state: {
    'on-record': 'on record',
    waived: 'accepted without a record',
    'hidden-before': 'hidden before by another layer',
  },
  least: (stage, views) => `At least “${stage}”${views > 1 ? `, ${views} photos of each part` : ''}`,
  whole: 'hidden over its whole length',
  hidden: (part) => `hidden from ${part}`,
  part: {
    named: (from, to) => `${from} to ${to}`,
    shown: (from, to) => `Shows it from ${from} to ${to}`,
    fromFoot: (from, to) => `${from} to ${to} m above its foot`,
    fromEnd: (from, to) => `${from} to ${to} m from its start`,
  },
  missing: (parts) => `Not on record: ${parts.join('; ')}`,
  missingAll: 'Not on record: all of it',
  reason: (reason) => `Reason: ${reason}`,
  shows: (mark, stage, file) => `${mark}, “${stage}”, on the photo ${file}`,
  taken: (when, within) => `Taken ${when}${within === '' ? '' : ` (${within})`}`,
  undated: 'Without a date',
  corrected: 'The camera’s clock was put right.',
  byHand: (who) => `Dated by hand by ${who}.`,
  within: (seconds) => {
    if (seconds < 120) return `± ${Math.round(seconds)} s`;
    if (seconds < 7200) return `± ${Math.round(seconds / 60)} min`;
    return `± ${Math.round(seconds / 3600)} h`;
  },
  stage: (stage) => `Shows it at the stage “${stage}”`,
  taggedBy: ({ who, when }) => `Tagged by ${who}, ${when}`,
  doubt: {
    doubted: ({ who, when, reason }) => `doubted by ${who} on ${when}: “${reason}”`,
    answered: ({ who, when, reason }) => `answered by ${who} on ${when}: “${reason}”`,
    reopened: ({ who, when, reason }) => `answer taken back by ${who} on ${when}: “${reason}”`,
  },
  doubts: (said) => `Before the release: ${said.join('; ')}`,
  later: {
    heading: 'Later than the release',
    lead: (when) =>
      `As of ${when}. The release itself reads as it was given; whether it still stands is said here.`,
    stands: 'Standing',
    standing: 'It stands.',
    notFor: (marks) =>
      `It stands, but not for ${marks.join(', ')}: what is hidden or on record of that is otherwise now. It is to be inspected anew.`,
    closing: 'Closing',
    open: 'The covering has not closed yet.',
    closedUnder: (when) => `The covering closed under this release on ${when}.`,
    closedElse: (when) => `The covering closed on ${when}, but not under this release.`,
    fewer: 'Records that counted then count no more.',
    more: 'More records count now than then.',
    what: {
      'hidden-since': 'Hidden only since then: no part of this release.',
      'more-hidden': 'More of it is hidden now than was released.',
      'hidden-no-more': 'The covering hides it no more.',
      records: 'Other records count now.',
    },
    changes: 'Changes',
    unchanged: 'Nothing that it rests on is otherwise now.',
    changed: 'What is otherwise now stands below, member by member.',
    ended: {
      withdrawn: ({ who, when }) => `taken back by ${who}, ${when}`,
      superseded: ({ who, when }) => `replaced by ${who}, ${when}`,
      disputed: ({ who, when, reason }) => `doubted by ${who} on ${when}: “${reason}”`,
    },
    gone: (record) => `Counts no more: ${record}`,
    come: (record) => `Counts now: ${record}`,
  },
  nobody: 'the program itself',
  and: '; ',
};
