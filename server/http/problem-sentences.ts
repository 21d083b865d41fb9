import type { ProblemCode } from '#domain/contract/problems';

/** What a person reads: what is wrong and what to do. {names} are filled from the failure's params. */
export const PROBLEM_SENTENCES: Record<ProblemCode, readonly [title: string, detail: string]> = {
  'invalid-request': [
    'The request cannot be read',
    'Some values are missing or wrong; `errors` says which. Correct them and send again.',
  ],
  'invalid-json': [
    'The body is not JSON',
    'The body could not be read as JSON. Check commas, quotes and brackets.',
  ],
  'not-signed-in': ['Not signed in', 'Sign in first, or send an access token.'],
  'wrong-credentials': [
    'E-mail or password is wrong',
    'No account has this e-mail with this password. Check both and try again.',
  ],
  'present-password-wrong': [
    'The present password is wrong',
    'Type the password with which you sign in now.',
  ],
  'cross-site-request': [
    'The request came from another site',
    'Changes are accepted only from the pages of this server or with an access token.',
  ],
  'not-permitted': ['Your role does not allow this', 'Ask the keeper of the record (role `owner`).'],
  'password-link-not-yours': [
    'You cannot make this link',
    'It is only for somebody else, who works in no house but yours. Otherwise whoever runs the program makes it: npm run reset-link.',
  ],
  'not-found': ['Nothing here', 'There is nothing at this address, or it is not yours to see.'],
  'method-not-allowed': ['This cannot be done here', 'The address exists, but not for this method.'],
  'id-used-for-something-else': [
    'The id is in use',
    'The id {id} already names something with other content. Make a new id.',
  ],
  'email-in-use': [
    'There is an account with this e-mail',
    '{email} has an account already. Sign in with it.',
  ],
  'tag-withdrawn': ['The tag was withdrawn', 'The tag of {mark} was withdrawn meanwhile. Place a new one.'],
  'tag-superseded': [
    'The tag was replaced',
    'The tag of {mark} was replaced meanwhile. Withdraw the newer one instead.',
  ],
  'covering-closed': [
    'The covering has closed',
    '{covering} has closed. Take the closing back first, with the reason.',
  ],
  'not-released': [
    'The covering is not released',
    'No release stands for {covering}. Have it inspected, or say why it closes without.',
  ],
  'released-for-less': [
    'The release does not cover the covering as it stands now',
    'More of {marks} is hidden by {covering} than was released, or less is on record of it. Have it inspected again, or say why it closes without.',
  ],
  'not-ready': [
    'The covering is not ready for inspection',
    '{covering} was not said to be ready for inspection. Whoever records says so first.',
  ],
  'already-released': ['The covering is released', '{covering} is released. Take the release back first.'],
  'evidence-changed': [
    'The evidence has changed',
    'What speaks for {marks} has changed since you looked. Look at it again.',
  ],
  'not-reviewed': ['Not all was looked at', '{count} members were not looked at: {marks}.'],
  'not-waived': [
    'Members have no record',
    'There is no record of {marks}. Accept each with a reason, or refuse the covering.',
  ],
  'not-hidden': ['The covering does not hide these', '{covering} does not hide {marks}.'],
  'four-eyes': [
    'Somebody else must release this',
    'You alone recorded {marks}. Somebody else must release {covering}; the keeper of the record can change this rule.',
  ],
  'doubt-of-own-tag': [
    'Somebody else answers the doubt',
    'The tag of {marks} is doubted, and you said it yourself: somebody else answers, or it is tagged anew.',
  ],
  'doubt-under-release': [
    'A release rests on what is doubted',
    'A release rests on the tag of {marks}: whoever gave it, whoever doubts, or another inspector answers; or it is said to be ready anew.',
  ],
  'ready-by-oneself': [
    'Somebody else must release this',
    'You said yourself that {covering} is ready. Somebody else must release it; the keeper of the record can change this rule.',
  ],
  'release-withdrawn': ['The release was taken back', 'This release was taken back already.'],
  'tag-not-standing': [
    'The tag does not stand any more',
    'The tag of {mark} was replaced or withdrawn. Doubt the one that stands.',
  ],
  'covering-not-closed': [
    'The covering has not closed',
    '{covering} has not closed, so there is no closing to take back.',
  ],
  'protection-lifted': [
    'The protection was lifted',
    '{protection} was lifted at another time. Take that lifting back first, with the reason.',
  ],
  'protection-not-lifted': [
    'The protection still lies',
    '{protection} has not been lifted, so there is no lifting to take back.',
  ],
  'protection-withdrawn': [
    'The protection was withdrawn',
    '{protection} was withdrawn as said by mistake. Say anew what was laid.',
  ],
  'protection-time-impossible': [
    'The time cannot be',
    'What lies there was laid and lifted in the past, and lifted after it was laid. Correct the time of {protection}.',
  ],
  'schedule-changed-since-preview': [
    'The schedule has changed',
    'What would be imported is no longer what was shown. Look at the preview again.',
  ],
  'finding-changed': [
    'The finding has changed',
    'It is no longer what you looked at. Look at it again, and answer what it says now.',
  ],
  'last-owner': [
    'A house needs a keeper of its record',
    'This person is the only one with the role `owner`. Give it to somebody else first.',
  ],
  'link-used-or-expired': [
    'The link no longer works',
    'It was used already, or it is too old. Ask for a new one.',
  ],
  'file-too-large': [
    'The file is too large',
    '{file} is larger than {limit} MB. Send a smaller export of it.',
  ],
  'request-too-large': [
    'The request is too large',
    'It is larger than the server takes at once. Send it in parts.',
  ],
  'unsupported-media-type': ['The kind of content is not understood', 'This address does not take {found}.'],
  'unknown-zone': [
    'The time zone is not known',
    '{zone} is not a time zone with a place name, such as Asia/Tokyo.',
  ],
  'unknown-marks': [
    'The schedule does not have these marks',
    'It does not have {marks}. Correct them, or enter the members first.',
  ],
  'grid-impossible': [
    'This is no grid',
    'In {family}, {label}: {reason}. Every line needs its own label and lies behind the one before.',
  ],
  'zone-without-grid': [
    'The house has no grid yet',
    'A zone lies between lines of the grid. State the grid first, or list the members.',
  ],
  'zone-impossible': [
    'This zone is no space in the grid',
    '{field}: {reason}. Name lines that the grid has, and a top above the bottom.',
  ],
  'unknown-kinds': ['The lexicon does not have these kinds', 'It has no {kinds}. Use ids of its kinds.'],
  'stage-outside-track': [
    'The stage does not fit the member',
    '{mark} cannot be asked for at the stage {stage} under this covering. Choose a stage that it passes and at which it is still seen.',
  ],
  'term-spelling-taken': [
    'The word names another kind',
    '“{spelling}” already stands for {other}. Give this kind another word, or add to that one.',
  ],
  'term-without-name': ['The kind has no name', 'Give it a name in Japanese or in English.'],
  'closing-in-the-future': [
    'The closing lies in the future',
    '{closedAt} has not come yet. Plan the day instead, and say so once it has closed.',
  ],
  'clock-mark-without-camera': [
    'The photo names no camera',
    '{file} names neither make nor model, so no other photo can be put right by it. Date the photo by hand instead.',
  ],
  'clock-mark-without-time': [
    'The photo holds no time',
    '{file} holds no time of the camera’s clock that could be compared. Photograph the clock with a camera that writes the time.',
  ],
  'time-in-the-future': [
    'The time lies in the future',
    '{time} has not come yet. Say when the photo was taken.',
  ],
  'photo-has-a-time': [
    'The photo has a time of its own',
    '{file} says when it was taken, and nothing contradicts that. If the camera’s clock was wrong, put it right by a clock mark.',
  ],
  'photo-not-dated-by-hand': [
    'The photo was not dated by hand',
    '{file} was not dated by hand, so there is nothing to withdraw.',
  ],
  'schedule-unreadable': [
    'The schedule cannot be read',
    'The file cannot be read as a table. Save it as CSV or XLSX and send it again.',
  ],
  'schedule-has-bad-rows': [
    'Some rows cannot be imported',
    '{count} rows have errors. Correct the file, or import without these rows.',
  ],
  'schedule-has-no-mark-column': ['No column holds the marks', 'Say which column holds the members’ marks.'],
  'no-photo-in-request': ['No photo was sent', 'Send one or more files in the field `photos`.'],
  'photo-empty': ['The file is empty', '{file} has no content. Copy it from the camera again.'],
  'photo-not-an-image': ['Not an image', '{file} is not an image. Only photos can be added.'],
  'photo-type-not-supported': [
    'This kind of image is not taken',
    '{file} is {found}. Save it as JPEG, PNG, WebP, TIFF, HEIC or AVIF.',
  ],
  'photo-too-many-pixels': [
    'The image has too many pixels',
    '{file} has {megapixels} megapixels; the limit is {limit}. Save it smaller.',
  ],
  'photo-damaged': [
    'The file is damaged',
    '{file} cannot be read as an image. Copy it from the camera again, or take the photo again.',
  ],
  'photo-interrupted': ['The file did not arrive whole', '{file} was cut off on the way. Send it again.'],
  'picture-not-ready': ['The picture is not made yet', 'It is being made. Ask again in a few seconds.'],
  'crop-outside-image': [
    'The part lies outside the image',
    '{xywh} is no part of this image. Use xywh=percent:x,y,w,h.',
  ],
  'too-many-attempts': ['Too many attempts', 'Wait {seconds} seconds and try again.'],
  'original-missing': [
    'An original is not on disk as it should be',
    'The original {file} (SHA-256 {sha256}) is missing in data/originals, or has another length. Put it back from a backup.',
  ],
  'internal-error': [
    'Something went wrong here',
    'The server made a mistake, which is written in its log. Try again; nothing that was accepted is lost.',
  ],
  'storage-full': [
    'The disk is full',
    'The server has no room left. Free some space; nothing that was accepted is lost.',
  ],
};
