export const account = {
  signIn: {
    again:
      'You were signed out. Sign in and you come back to where you were; what waits on this device is kept.',
    title: 'Sign in',
    lead: 'Arakabe keeps the photo record of a timber frame: which piece each picture shows, what is still missing before it disappears, and the history that stays.',
    email: 'E-mail',
    password: 'Password',
    submit: 'Sign in',
    lost: 'Lost your password? The keeper of the record of a house that you work on makes a link for a new one, under People. Whoever runs the server can make one for any account: npm run reset-link -- your e-mail.',
    noAccount:
      'No account yet? The keeper of a house’s record can give you a one-time link. The very first account is made with the link that the server prints when it starts.',
  },
  link: {
    deadTitle: 'This link opens nothing',
    firstTitle: 'Make the first account',
    firstLead:
      'The first account of this installation. Everybody with an account can open the record of a house and is then its keeper, who gives others their roles in it. Houses that a lost database has left without a keeper come to this account.',
    joinTitle: 'Join the record of {{house}}',
    joinLead: 'You will work on it as {{role}}.',
    name: 'Your name',
    nameHint: 'It stands beside everything that you record, for good.',
    passwordHint: 'At least ten characters. A short sentence is easy to keep in mind.',
    submit: 'Make the account',
    loading: 'Looking at the link …',
    signedIn:
      'You are signed in as {{name}}. This link makes another account; sign out first if it is not for you.',
    openHouses: 'To my houses',
  },
  missing: {
    email: 'Enter an e-mail address, e.g. name@example.org.',
    password: 'Enter your password.',
    shortPassword: 'Use at least ten characters. You have typed {{count, number}}.',
    name: 'Enter your name.',
  },
} as const;
