export const place = {
  title: 'Site plan',
  lead: 'Where photos were taken, by the position in each file, and where the devices were that added them. A phone errs by some metres, more between houses: the plan tells whether a photo is of this site, not which member it shows.',
  toPlan: 'Site plan',
  point: {
    n: 'north',
    nne: 'north-north-east',
    ne: 'north-east',
    ene: 'east-north-east',
    e: 'east',
    ese: 'east-south-east',
    se: 'south-east',
    sse: 'south-south-east',
    s: 'south',
    ssw: 'south-south-west',
    sw: 'south-west',
    wsw: 'west-south-west',
    w: 'west',
    wnw: 'west-north-west',
    nw: 'north-west',
    nnw: 'north-north-west',
  },
  north: 'N',
  metres: '{{n}} m',
  kilometres: '{{n}} km',
  verdict: {
    'on-site': 'On site',
    'off-site': 'Not on site',
    'cannot-tell': 'Cannot tell whether on site',
  },
  why: {
    'on-site': 'with all of its error it lies within {{radius}} of the middle.',
    'off-site': 'with all of its error it lies farther than {{radius}} from the middle.',
    'cannot-tell': 'the edge of the site, {{radius}} from its middle, lies within the error.',
  },
  fromMiddle: '{{distance}} {{point}} of the site’s middle, ± {{error}}',
  atMiddle: 'at the site’s middle, ± {{error}}',
  looking: 'looking {{point}}',
  noPosition: 'The file holds no position.',
  notTaken: 'The file holds a position that cannot be right; it is not used.',
  removed:
    'Many phones remove it when a picture is picked in a browser; the same file copied from the phone to a computer still has it.',
  latLon: '{{lat}}, {{lon}}',
  errorStated: '± {{error}} by the file itself',
  errorAssumed: '± {{error}} assumed, the file states no error',
  tokyo:
    'The file gives the position in the old Tokyo datum, which lies up to 450 m beside the one used today. That is counted into the error.',
  altitude: 'altitude {{metres}} m',
  noSite: 'The house has no position, so nobody can say whether this was on site.',
  enterSite: 'Enter it in the house details',
  heading: {
    true: 'Looked {{point}}, {{degrees}}° from true north.',
    turned:
      'Looked {{point}}, {{degrees}}° from true north: {{stated}}° by the compass, which pointed {{declination}} there.',
    asStated: 'Looked to {{degrees}}° by the file.',
    east: '{{degrees}}° east of it',
    west: '{{degrees}}° west of it',
    flag: {
      'north-not-stated': 'Which north it means is not stated, so it may be some degrees off.',
      'turned-at-site': 'The file holds no position; the compass was corrected for the site.',
      'no-place-to-turn-at':
        'It is from magnetic north; without a position of photo or house it cannot be corrected.',
      'no-magnetic-model':
        'It is from magnetic north; for that year or place no model says how far that is from true north.',
    },
    compass: 'Iron and machines nearby turn a compass by many degrees.',
  },
  view: 'The picture takes in {{degrees}}° from side to side.',
  device: {
    title: 'Device',
    text: 'Added by {{who}} with a device at {{lat}}, {{lon}}, ± {{error}}, measured {{when}}. That is where the device was then, not where the picture was taken, and it decides nothing.',
    from: 'That is {{distance}} {{point}} of the site’s middle.',
    inPlan: 'device: {{words}}',
  },
  statement:
    'Said where the device was that added a photo: {{lat}}, {{lon}}, ± {{error}}, measured {{when}}.',
  plan: {
    label: 'Plan of the site, north above',
    labelOne: 'Plan of the site, north above. {{words}}.',
    site: 'the site, {{radius}} around its middle',
    photo: 'a photo with its error, and what it takes in',
    device: 'a device that added photos',
    beyond: 'farther away than the plan reaches',
    legend: 'What the plan shows',
    list: 'The photos of the plan',
    day: 'Day',
    everyDay: 'all days',
    undated: 'without a date',
    shown_one: '{{count, number}} photo with a position in the file',
    shown_other: '{{count, number}} photos with a position in the file',
    onSite: 'on site {{n}}',
    offSite: 'not on site {{n}}',
    cannotTell: 'cannot tell {{n}}',
    without_one: '{{count, number}} photo has no position and is not shown.',
    without_other: '{{count, number}} photos have no position and are not shown.',
    none: 'No photo with a position',
    noneText:
      'As soon as a photo holds its position, it is shown here. Many phones remove it when a picture is picked in a browser.',
    noSite: 'The house has no position yet: the plan is drawn about the middle of the photos.',
    more_one: 'and {{count, number}} more photo; choose a day',
    more_other: 'and {{count, number}} more photos; choose a day',
  },
  upload: {
    row: 'added, without a position',
    rowDevice: 'added; the file holds no position, this device’s is on record beside it',
    lead_one:
      '{{count, number}} photo came without a position. Many phones remove it when a picture is picked in a browser. Where it matters, copy the file from the phone to a computer and add it from there.',
    lead_other:
      '{{count, number}} photos came without a position. Many phones remove it when a picture is picked in a browser. Where it matters, copy the files from the phone to a computer and add them from there.',
    offer:
      'You can also put on record where this device is now. It stands beside the photos as a statement of yours, apart from what a file says, and decides nothing.',
    button_one: 'Add this device’s position to it',
    button_other: 'Add this device’s position to these {{count, number}}',
    needsHttps:
      'The position of this device cannot be added here: browsers give it only over https, and this page came over plain http.',
    unsupported: 'This browser cannot tell the position of the device.',
    denied:
      'The browser may not tell this page where the device is. Allow the position for this address in the browser’s settings, then press again.',
    unavailable:
      'The device does not find its position just now. Go where it sees the sky, or switch on its location service, then press again.',
    timeout:
      'The device did not find its position within {{seconds}} seconds. Go where it sees the sky, then press again.',
    done_one: 'The position of this device, ± {{error}}, is on record with {{count, number}} photo.',
    done_other: 'The position of this device, ± {{error}}, is on record with {{count, number}} photos.',
  },
  settings: {
    radius: 'How far the site reaches',
    radiusHint:
      'Metres from the position to its farthest corner, and somewhat more. 100 m suits most plots: a phone errs by 10 m and more between houses.',
    radiusWrong: 'Enter metres from 10 to 10 000, e.g. 100.',
    fromPhotos: 'Take the middle of the photos’ positions',
    fromPhotosHint_one: '{{count, number}} photo holds a position.',
    fromPhotosHint_other:
      '{{count, number}} photos hold a position. The middle is proposed; look at it before you save.',
    value: '{{lat}}, {{lon}}, within {{radius}}',
  },
} as const;
