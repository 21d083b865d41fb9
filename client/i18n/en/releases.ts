export const releases = {
  print: 'Print',
  pdf: 'As PDF',
  code: 'A code that leads to the check of this release',
  member: 'Member {{mark}}',
  takeBack: {
    open: 'Take the release back …',
    title: 'Take the release of “{{name}}” back?',
    text: 'The covering may not close under it any more; where it has closed already, its page and the findings say that the release was taken back. The release stays on record, with your name and the reason.',
    submit: 'Take the release back',
  },
} as const;
