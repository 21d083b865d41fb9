export const releases = {
  print: 'Print',
  pdf: 'As PDF',
  code: 'A code that leads to the check of this release',
  member: 'Member {{mark}}',
  takeBack: {
    open: 'Take the release back …',
    title: 'Take the release of “{{name}}” back?',
    text: 'The covering cannot close under it any more. The release stays on record, and so does that you took it back, and why.',
    textClosed:
      'The covering closed under it on {{when}}. Its page and the findings will say that the release was taken back. Both stay on record, with your name and the reason.',
    submit: 'Take the release back',
  },
} as const;
