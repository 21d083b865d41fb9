import type { ProblemCode } from '#domain/contract/problems';

export const problems = {
  offline: 'The server did not answer. Check the network and try again.',
  offlineKept: 'The server did not answer. Check the network and try again; what you typed is still here.',
  unexpected: 'Something went wrong in this browser. Load the page again.',
  fields: 'It is about: {{fields}}.',
  field: {
    name: 'name',
    zone: 'time zone',
    space: 'zone: a line or a height of it',
    firstDay: 'first day on site',
    site: 'position of the site',
    email: 'e-mail',
    password: 'password',
    role: 'role',
    mark: 'mark',
    kind: 'kind',
    place: 'place',
    track: 'stages that it passes',
    note: 'note',
    text: 'text',
    other: 'other columns',
    plannedDay: 'planned closing day',
    closedAt: 'time of closing',
    hides: 'members that it hides',
    least: 'least stage',
    stage: 'stage',
    region: 'region on the photo',
    reason: 'reason',
    day: 'day',
    mapping: 'meaning of the columns',
    fileName: 'file name',
  },
  unstated: {
    spelling: 'the word',
    other: 'another kind',
    file: 'This file',
    found: 'something else',
    limit: 'the limit',
    marks: 'some marks',
    mark: 'this member',
    stage: 'this stage',
    zone: 'this zone',
    email: 'this address',
    covering: 'this covering',
    seconds: 'some',
    megapixels: 'too many',
  },
  code: {
    'invalid-request': 'Something in this form does not fit. Check what you entered and send it again.',
    'invalid-json': 'What was sent arrived garbled. Load the page again and repeat it.',
    'not-signed-in': 'You are not signed in any more. Sign in and repeat what you did.',
    'wrong-credentials': 'E-mail and password do not belong together. Check both and try again.',
    'present-password-wrong': 'This is not your present password. Type the one with which you sign in now.',
    'cross-site-request':
      'This was sent from another site and was refused. Open this page from its own address.',
    'not-permitted': 'Your role in this house does not allow this. Ask the keeper of the record.',
    'password-link-not-yours':
      'You can make this link only for somebody who works in your houses alone. For others whoever runs the program makes it.',
    'not-found': 'This is not here, or it belongs to a house that you do not work on.',
    'method-not-allowed': 'The server does not do this at that address. Load the page again.',
    'id-used-for-something-else':
      'This was saved before, with something else in it. Load the page again and repeat your change.',
    'email-in-use': 'There is already an account with {{email}}. Sign in with it instead.',
    'tag-withdrawn':
      'The tag of {{mark}} has been withdrawn meanwhile. Look at the photo again and place a new one.',
    'tag-superseded':
      'Somebody has replaced the tag of {{mark}} meanwhile. Look at the new one before you change it.',
    'covering-closed': '“{{covering}}” has closed and cannot be changed. Take the closing back first.',
    'covering-not-closed': '“{{covering}}” has not closed, so there is no closing to take back.',
    'not-released': 'No release stands for “{{covering}}”. Have it inspected, or say why it closes without.',
    'released-for-less':
      '“{{covering}}” now hides more of {{marks}} than was released, or less is on record of it. Have it inspected again, or say why it closes without.',
    'not-ready': '“{{covering}}” is not ready for inspection: nobody has said so, or somebody took it back.',
    'already-released': '“{{covering}}” is released. Take the release back first.',
    'evidence-changed': 'What speaks for {{marks}} has changed since you looked. Look at it again.',
    'not-reviewed': 'Not all was looked at: {{marks}}.',
    'not-waived': 'There is no record of {{marks}}. Accept each with a reason, or refuse.',
    'not-hidden': '“{{covering}}” does not hide {{marks}}.',
    'four-eyes':
      'You alone recorded {{marks}}. Somebody else must release “{{covering}}”, or the keeper of the record changes this rule in the house details.',
    'doubt-of-own-tag':
      'You tagged {{marks}} yourself, and that tag is doubted: let somebody else answer, or tag a better photo.',
    'doubt-under-release':
      'A release rests on the tag of {{marks}}, and would hold again by your answer: let whoever gave it, whoever doubts, or another inspector answer; or say that the covering is ready, and it is inspected anew.',
    'ready-by-oneself': 'You said yourself that “{{covering}}” is ready: somebody else must release it.',
    'release-withdrawn': 'This release was taken back already.',
    'tag-not-standing':
      'The tag of {{mark}} was replaced or withdrawn meanwhile. Look at the one that stands.',
    'protection-lifted': 'It was lifted at another time already. Take that lifting back first.',
    'protection-not-lifted': 'It has not been lifted, so there is no lifting to take back.',
    'protection-withdrawn': 'This protection was withdrawn as said by mistake. Say anew what was laid.',
    'protection-time-impossible':
      'Protection is laid and lifted in the past, and lifted after it was laid. Correct the time.',
    'schedule-changed-since-preview':
      'The schedule has changed since this preview. Look at the new preview and agree again.',
    'finding-changed':
      'This is no longer what you looked at: something on record has changed. Look at it again, and answer what it says now.',
    'last-owner': 'A house needs a keeper of its record. Make somebody else keeper first.',
    'link-used-or-expired': 'This link has been used or has expired. Ask for a new one.',
    'file-too-large': '{{file}} is larger than {{limit}} MB. Send a smaller file.',
    'request-too-large': 'This is more than the server takes at once. Send it in smaller parts.',
    'unsupported-media-type':
      'The server cannot read this kind of file. Choose one of a kind that is named here.',
    'unknown-zone': 'There is no time zone {{zone}}. Choose one from the list, e.g. Asia/Tokyo.',
    'unknown-marks': 'The schedule does not have {{marks}}. Enter these members first, or correct the marks.',
    'grid-impossible':
      'These lines make no grid: every line needs a label of its own and lies behind the one before.',
    'zone-without-grid': 'The house has no grid yet. State it first, or list the members.',
    'zone-impossible':
      'This zone is no space in the grid. Name lines that the grid has, and a top above the bottom.',
    'unknown-kinds': 'The lexicon does not have one of these kinds. Choose kinds that it has.',
    'stage-outside-track':
      '{{mark}} cannot be asked for at the stage “{{stage}}” here. Choose a stage that it passes and at which it is still seen.',
    'term-spelling-taken':
      '“{{spelling}}” already stands for {{other}}. Give this kind another word, or change that one.',
    'term-without-name': 'Give the kind a name in Japanese or in English.',
    'closing-in-the-future': 'A closing cannot lie in the future. Give the time at which it closed.',
    'clock-mark-without-camera':
      '{{file}} does not say which camera took it, so no other photo can be put right by it. Date the photo by hand instead.',
    'clock-mark-without-time':
      '{{file}} holds no time of the camera’s clock. Photograph the clock with a camera that writes the time.',
    'time-in-the-future':
      'A photo cannot have been taken in the future. Correct the day and the time, and say it again.',
    'photo-has-a-time':
      '{{file}} says when it was taken, and nothing contradicts that. If the camera’s clock was wrong, put it right by a clock mark.',
    'photo-not-dated-by-hand': '{{file}} is not dated by hand, so there is nothing to withdraw.',
    'schedule-unreadable':
      '{{file}} cannot be read as a schedule. Save it as CSV (UTF-8) or XLSX and choose it again.',
    'schedule-has-bad-rows':
      'Some rows cannot be imported. Correct them in the file, or agree to leave them out.',
    'schedule-has-no-mark-column': 'No column holds the marks. Say below which column it is.',
    'no-photo-in-request': 'No photo arrived. Choose at least one.',
    'photo-empty': '{{file}} is empty. Copy it from the camera again.',
    'photo-not-an-image': '{{file}} is not a photo ({{found}}). Choose the photo itself.',
    'photo-type-not-supported':
      '{{file}} is of a kind that cannot be kept ({{found}}). Save it as JPEG, PNG, TIFF, WebP, HEIC or AVIF.',
    'photo-too-many-pixels':
      '{{file}} has {{megapixels}} megapixels, more than {{limit}}. Send a smaller picture.',
    'photo-damaged': '{{file}} is damaged and cannot be opened. Copy it from the camera again.',
    'photo-interrupted': '{{file}} did not arrive completely. Send it again.',
    'picture-not-ready': 'The small picture is still being made. Wait a moment.',
    'crop-outside-image': 'This part lies outside the picture. Draw the region again.',
    'too-many-attempts': 'Too many attempts in a short time. Wait {{seconds}} seconds and try again.',
    'original-missing':
      'The original file of {{file}} is missing on the server, or damaged. Tell whoever runs the program: it must come back from a backup.',
    'internal-error':
      'The server made a mistake. Nothing was saved of this step; try again, and tell whoever runs the program if it stays.',
    'storage-full':
      'The server has no room left. Tell whoever runs the program; nothing was saved of this step.',
  } satisfies Record<ProblemCode, string>,
} as const;
