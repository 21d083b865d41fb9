/** Passwords and sessions. */
export const password = {
  account: {
    title: 'Your account',
    details: 'Who you are',
    nameLabel: 'Name',
  },
  title: 'Password',
  lead: 'A new password ends every other session of yours, and your calendar addresses.',
  present: 'Present password',
  next: 'New password',
  tokens: 'End my access tokens as well',
  submit: 'Change the password',
  changed:
    'The password is changed. Everywhere else you are signed out, and your calendar addresses have ended; make new ones where you need them.',
  sessions: {
    title: 'Where you are signed in',
    lead: 'If you do not know one of these, sign out everywhere and change the password.',
    list: 'Your sessions',
    device: 'Device',
    since: 'Signed in',
    seen: 'Last seen',
    here: '(here)',
    unknown: 'unknown device',
    browserOn: '{{browser}} on {{system}}',
    end: 'Sign out everywhere',
    endTitle: 'Sign out everywhere?',
    endText:
      'Every session of yours ends, this one too, and so do your calendar addresses. What waits on this device to be sent is kept.',
  },
  link: {
    title: 'Set a new password',
    by: '{{name}} made this link, for the account {{email}}. Whoever uses it can speak in your name, so the ledger of every house you work on says that it was made.',
    byProgram:
      'Whoever runs the program made this link, for the account {{email}}. The ledger of every house you work on says so.',
    ends: 'All your sessions, calendar addresses and access tokens end.',
    submit: 'Set the password',
  },
} as const;
