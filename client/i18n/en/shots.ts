export const shots = {
  title: 'Shot list',
  lead: 'What has no record yet before it closes, as one walk: where to stand, which way to look, what to photograph there.',
  print: 'Print for the site',
  addPhotos: 'Add photos',
  within: 'Closes within',
  days_one: '{{count}} day',
  days_other: '{{count}} days',
  all: 'All that is open',
  nothing: 'Nothing is missing for what closes by then.',
  nothingAtAll: 'Nothing is missing: no member that an open covering hides is a gap.',
  later_one: '{{count}} gap more closes later, or has no day.',
  later_other: '{{count}} gaps more close later, or have no day.',
  showAll: 'Show all',
  progress: 'Shots on record: {{done}} of {{total}}; a long member may take several.',
  lost_one: '{{count}} has closed without a record.',
  lost_other: '{{count}} have closed without a record.',
  unasked_one: '{{count}} is no longer asked for.',
  unasked_other: '{{count}} are no longer asked for.',
  closedSince_one:
    '{{names}} has closed since this walk was ordered, and may now be before what you look for. Order the walk anew.',
  closedSince_other:
    '{{names}} have closed since this walk was ordered, and may now be before what you look for. Order the walk anew.',
  since: 'Ordered {{when}}. What comes on record is ticked off by itself and stays where it is.',
  added_one: '{{count}} shot is missing that does not stand in this walk.',
  added_other: '{{count}} shots are missing that do not stand in this walk.',
  order: 'Order the walk anew',
  level: 'Level {{level}}',
  noLevel: 'Where to stand',
  plan: 'Plan of the places: {{numbers}}',
  planKey:
    'Number: a place, in the order of the walk. Point: which way to look; a ring: up or down as well. Thick line: what is missing.',
  place: 'Place {{number}}',
  where: {
    room: 'In the bay between {{from}} and {{to}}',
    wall: 'A metre from line {{line}}, between {{from}} and {{to}}, on the side of {{beside}}',
    outside: 'Outside, a metre from line {{line}}, between {{from}} and {{to}}',
  },
  look: {
    line: 'Look towards line {{line}}',
    up: 'Look up',
    down: 'Look down',
  },
  noFloor: 'No floor is on record here: only from boards that are laid and fixed, or from a scaffold.',
  noGround: 'Above the ground and outside: only from a scaffold that is made for it.',
  covering: 'for {{covering}}',
  coveringSo: 'for {{covering}}: {{state}}',
  state: {
    'on-record': 'on record',
    lost: 'closed without a record',
    unasked: 'no longer asked for',
  },
  unseen: 'Seen from no place',
  unseenReason: {
    blocked:
      'Something that stands, or has closed, is before it wherever one could stand. Look for a gap from firm ground; what cannot be seen safely is for the person in charge of the site.',
    'out-of-reach':
      'Farther than six metres from every place, or seen from its end only. It needs a scaffold that is there anyway, or a photo while it is still on the ground.',
  },
  placeless: 'Of these nobody knows where they lie',
  placelessText: 'The schedule does not say where they lie, so they are listed by the place it names.',
  toSchedule: 'Complete the schedule',
  noGrid:
    'This house has no grid yet, so no place to stand can be worked out. State the lines and levels, and let the schedule say where members lie; until then this is the list by place.',
  toGrid: 'State the grid',
  byPlace: 'By place',
  caution:
    'Stand only on the ground, on a floor that is laid, or on a scaffold that has been released. Do not climb, reach or lean for a photo, and mind open floors; the rules of the site and of whoever is in charge come first.',
  known:
    'What stands in the way is known only as far as it is on record: if a view is blocked, look for another.',
  tickHint: 'Tick on paper what has been photographed.',
} as const;
