import { refuse, runCommand } from './command.ts';
import { makeKeepersPasswordLink } from './services/passwords.ts';

/** `npm run reset-link -- name@example.org`: a link by which whoever has lost their password sets a new one. */
const [, , email = ''] = process.argv;
if (email === '') refuse('Say whose password: npm run reset-link -- name@example.org');
else
  runCommand(async ({ context }, at) => {
    const made = await makeKeepersPasswordLink(context, email);
    if (!made) return refuse(`There is no account with the e-mail ${email}.`);
    process.stdout.write(`It can be used once, until ${made.until}: ${at(`/link/${made.link}`)}\n`);
  });
