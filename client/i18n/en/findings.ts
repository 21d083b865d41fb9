import { FINDING_NAMES } from '#domain/record/findings/names';

export const findings = {
  title: 'Findings',
  lead: 'What does not fit together, or cannot be known. Nothing is put right silently: correct what is wrong, or accept it by your name with a reason. Both stay on record.',
  none: 'Nothing found',
  noneText_one: 'This check found nothing that is open: {{checks}}.',
  noneText_other: 'The {{count, number}} checks of this page found nothing that is open: {{checks}}.',
  noneBeyond: 'What nobody photographed or tagged cannot be found in this way. Look at the frame itself.',
  noneAccepted: 'Nothing was accepted yet',
  noneAcceptedText: 'What somebody accepts is listed here, with the name and the reason.',
  open: 'To be looked at ({{count, number}})',
  accepted: 'Accepted ({{count, number}})',
  states: 'Which findings',
  kinds: 'Only one kind',
  everyKind: 'all kinds',
  ofKind: '{{kind}} ({{count, number}})',
  more: 'Show more',
  stops: 'Until then these tags count as no record.',
  about: 'Photos and tags',
  photoUndated: 'no date: {{file}}',
  tag: '{{mark}}: {{stage}}',
  moreTags_one: 'and {{count, number}} more tag',
  moreTags_other: 'and {{count, number}} more tags',
  moreMarks_one: 'and {{count, number}} more member',
  moreMarks_other: 'and {{count, number}} more members',
  wasAccepted: 'Accepted by {{who}} on {{when}}: {{reason}}',
  wasAcceptedBefore:
    '{{who}} accepted this on {{when}} ({{reason}}), but what it rests on has changed since.',
  accept: 'Accept …',
  acceptNamed: 'Accept: {{what}}',
  acceptAll_one: 'Accept this …',
  acceptAll_other: 'Accept all {{count, number}} of these …',
  takeBack: 'No longer accept',
  takeBackNamed: 'No longer accept: {{what}}',
  reopen: {
    title: 'Take this acceptance back?',
    text: 'It stays on record with its reason, and this is to be looked at again.',
    stops:
      'It stays on record with its reason, and this is to be looked at again; until then these tags count as no record.',
  },
  dialog: {
    title_one: 'Accept this finding?',
    title_other: 'Accept {{count, number}} findings?',
    text: 'It goes on record that you, {{name}}, have looked at this and take it as it is. When what it rests on changes, it comes up again.',
    more_one: 'and {{count, number}} more',
    more_other: 'and {{count, number}} more',
    counts: 'The tags that it is about then count as records again.',
    reason: 'Reason',
    needReason: 'Say why it can be taken as it is.',
    submit: 'Accept by my name',
  },
  doubt: {
    wasAccepted: 'Answered by {{who}} on {{when}}: {{reason}}',
    wasAcceptedBefore: '{{who}} answered on {{when}} ({{reason}}), but it has been doubted anew since.',
    accept: 'Answer the doubt …',
    acceptNamed: 'Answer: {{what}}',
    acceptAll_one: 'Answer this doubt …',
    acceptAll_other: 'Answer all {{count, number}} of these …',
    takeBack: 'Take the answer back',
    takeBackNamed: 'Take the answer back: {{what}}',
    own: 'You said this tag yourself: somebody else answers the doubt, or you tag a better photo.',
    dialog: {
      title_one: 'Answer this doubt?',
      title_other: 'Answer {{count, number}} doubts?',
      text: 'It goes on record that you, {{name}}, have looked at this and say that the tag is right, and why.',
      reason: 'Why the tag is right',
      submit: 'Answer by my name',
    },
  },
  here: 'What speaks against this photo',
  hereMember: 'What does not fit together',
  toAll: 'All findings',
  waiting_one: '{{count, number}} finding to look at',
  waiting_other: '{{count, number}} findings to look at',
  kind: FINDING_NAMES.en,
  say: {
    'stage-goes-back':
      '{{mark}} is at an earlier stage on a later photo. One of these tags, or one of the dates, is wrong.',
    'stages-at-once': 'One photo shows {{mark}} at {{stages}}. Only one of them can be right.',
    'places-at-once':
      '{{mark}} is on photos that were taken within a minute at places {{distance, number}} m apart.',
    'stage-outside-track': '{{mark}} is tagged “{{stage}}”, a stage that it does not pass by the schedule.',
    'same-picture': {
      two: 'These two pictures are nearly the same, but one is of {{first}} and the other of {{second}}.',
      one: 'These two pictures are nearly the same, but only one has a date: {{first}}.',
      unknown: 'These two pictures are nearly the same, but their times are not.',
    },
    'off-site': 'Taken {{distance, number}} m from the site (± {{error, number}} m).',
    'readers-differ': 'Read twice, in two ways, the file gives different values.',
    'clock-disagrees': {
      'gps-disagrees': 'The camera’s clock and the satellite time in the file do not fit together.',
      'camera-not-in-house-zone': 'The camera was not set to the house’s time zone.',
    },
    'time-unsure': {
      'ambiguous-hour': 'The clocks went back that night, so this hour came twice.',
      'skipped-hour': 'The clocks went forward that night, so this hour never was.',
      'zone-not-read':
        'A thermal camera wrote its time zone into a record of its own, which is not read. The time was read in the house’s zone.',
      'clock-set-between-marks':
        'The camera’s clock was set between two of its clock marks, and nobody knows when: the time may be wrong by {{within}}.',
    },
    'before-first-day': 'The photo’s date ({{taken}}) lies before the first day on site, {{first}}.',
    'after-upload': 'The photo’s date ({{taken}}) lies later than the photo was added.',
    'no-date': {
      none: 'The file holds no time that can be used.',
      'implausible-year': 'The file’s time is of a year that cannot be, as of a clock that was never set.',
    },
    unreadable: '{{mark}} cannot be read in its region: {{why}}.',
    'unknown-mark': '{{mark}} is tagged, but the schedule does not have it.',
    'shown-after-closing': '{{mark}} is seen on a photo taken after “{{name}}” closed ({{closed}}).',
    disputed: '{{by}} doubts this tag of {{mark}} since {{when}}: “{{why}}”.',
    'closed-without-release': {
      said: '“{{name}}” closed without release, for this reason: “{{why}}”.',
      unsaid: '“{{name}}” closed without release, and nobody said why.',
    },
    'release-taken-back': '“{{name}}” closed under a release that {{by}} took back on {{when}}: “{{why}}”.',
    'closed-with-gaps_one': '“{{name}}” closed while {{count, number}} member had no record.',
    'closed-with-gaps_other': '“{{name}}” closed while {{count, number}} members had no record.',
  },
  why: {
    'too-small': 'too small',
    blurred: 'blurred',
    'too-dark': 'too dark',
    'too-bright': 'too bright',
  },
  span: { seconds: '{{count, number}} s', minutes: '{{count, number}} min', hours: '{{count, number}} h' },
  todo: {
    disputed:
      'Change or withdraw the tag, or tag a better photo. If the tag is right, answer by accepting it with the reason.',
    'release-taken-back':
      'Say by your name what was found instead, and what follows from it; or take the closing back, if it is to be opened again.',
    'closed-without-release':
      'Say by your name how it came to this and what was looked at instead, or take the closing back if it was said by mistake.',
    'stage-goes-back':
      'Look at these photos one after the other. Change the tag that is wrong, or put the camera’s clock right.',
    'stages-at-once': 'Change or withdraw the tag that is wrong.',
    'places-at-once': 'Look at both photos: one of the tags, or one of the positions, is wrong.',
    'stage-outside-track': 'Change the tag, or the stages of the member in the schedule.',
    'same-picture':
      'Perhaps one is a copy that was saved again. Tag the one with the true time, and withdraw the tags of the other.',
    'off-site':
      'If the photo is of this house, accept it and say where it was taken. If the site’s position is wrong, correct it in the house details.',
    'readers-differ': 'Take the value that you know to be right, and accept this with the reason.',
    'clock-disagrees':
      'Photograph a clock with that camera and say the true time (clock mark), or accept it when you know why.',
    'time-unsure': 'Accept the time as it is, or put the camera’s clock right by another clock mark.',
    'before-first-day':
      'Put the camera’s clock right by a clock mark, date the photo by your name, or correct the first day in the house details.',
    'after-upload': 'Put the camera’s clock right by a clock mark, or date the photo by your name.',
    'no-date': 'If you know when it was taken, date it at the photo, by your name.',
    unreadable:
      'Photograph the member again, from nearer or with more light; or accept it if it can be read.',
    'unknown-mark': 'Enter the member, or change the tag to the right mark.',
    'shown-after-closing':
      'Was the closing said too early, was the covering opened again, or is the tag wrong? Correct it, or accept it.',
    'closed-with-gaps':
      'These members are hidden without a record. If a photo exists, add and tag it; or accept the loss by your name.',
  },
  way: {
    settings: 'House details',
    cameras: 'Clock marks',
    members: 'Enter the member',
    covering: 'To the covering',
    member: 'To the member',
  },
} as const;
