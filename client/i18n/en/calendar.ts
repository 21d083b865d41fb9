export const calendar = {
  title: 'Closings in your calendar',
  lead: 'A calendar program that takes an address can show what has closed and what closes when. The title says how each covering stands: how many gaps, and whether it is ready for inspection, refused, released, or closed with or without a release. A covering whose day was taken away stays, as cancelled. The program asks again every hour or so, by its own clock.',
  reads:
    'Whoever has the address reads, without signing in: the name of the house; the name, kind, day and standing of each covering that has a day or had one; how many members it hides, and how many of them are on record, gaps or lost; marks and kinds of up to twelve members without a record; when that last became otherwise, and how much was said of the covering; and the address of the covering here, which opens only for whoever signs in. No photos and no people, and nobody can change anything by it. Give it to your calendar program only.',
  make: 'Make my address',
  makeNew: 'Make a new address …',
  madeTitle: 'This is your address. It is shown only now.',
  madeText:
    'Enter it in your calendar program where it asks for the address of a calendar. It ends when your role in this house ends.',
  address: 'Address of the calendar',
  have: 'You made an address on {{when}}; titles are in {{language}}.',
  language: { en: 'English', ja: 'Japanese' },
  readLast: 'It was last read on {{when}}.',
  neverRead: 'It has not been read yet.',
  end: 'End the address …',
  endTitle: 'End your calendar address?',
  endText: 'Calendar programs that use it get nothing more from it. This cannot be undone.',
  endYes: 'End the address',
  newTitle: 'Make a new calendar address?',
  newText:
    'The one that you have ends at once. Enter the new one wherever you use it. Titles will be in the language that you see now.',
} as const;
