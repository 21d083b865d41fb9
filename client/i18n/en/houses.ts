export const houses = {
  title: 'Houses under record',
  none: 'No house yet',
  noneText:
    'Open the record of a house to begin. After that you load its schedule of members, send photos, and say what covers what and when.',
  open: 'Open the record of a house',
  openLead:
    'You become the keeper of its record and give others their roles. All of this can be changed later; the ledger keeps what stood there before.',
  submit: 'Open the record',
  role: 'You: {{role}}',
  list: 'Your houses',
  fields: {
    name: 'Name of the house',
    nameHint: 'As the crew calls it.',
    zone: 'Time zone of the site',
    zoneHint: 'Days and closings are counted in it. Type a city to narrow the list.',
    firstDay: 'First day on site',
    firstDayHint: 'A photo dated before it counts as no record. May be left empty.',
    site: 'Position of the site',
    siteHint: 'Latitude, longitude in degrees, e.g. 35.0116, 135.7681. May be left empty.',
  },
  missing: {
    name: 'Give the house a name.',
    zone: 'Choose a time zone from the list.',
    site: 'Enter two numbers: latitude −90 to 90, a comma, longitude −180 to 180.',
  },
  settings: {
    title: 'House details',
    lead: 'What is known of the site as a whole.',
    onlyKeeper: 'Only the keeper of the record can change these.',
    unset: 'not given',
    saved: 'The details are saved.',
    siteEmptied: 'Without a position, photos can no longer be told on site or not on site.',
  },
} as const;
