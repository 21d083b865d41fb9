import { refuse, runCommand } from './command.ts';
import { makeKeepersPasswordLink } from './services/passwords.ts';
import { toldTime } from './services/told-time.ts';

/** `npm run reset-link -- name@example.org`: a link by which whoever has lost their password sets a new one. */
const [, , email = ''] = process.argv;
if (email === '') refuse('Say whose password: npm run reset-link -- name@example.org');
else
  runCommand(async ({ context }, at) => {
    const made = await makeKeepersPasswordLink(context, email);
    if (!made) return refuse(`There is no account with the e-mail ${email}.`);
    process.stdout.write(
      `A link for a new password of ${email}, to be used once, until ${localTime(made.until)}:\n` +
        `${at(`/link/${made.link}`)}\n`,
    );
  });

/** As clocks stand where the command is run, and by how much they go before UTC then. */
function localTime(instant: string): string {
  const { timeZone } = new Intl.DateTimeFormat().resolvedOptions();
  const parts = new Intl.DateTimeFormat('en-GB', { timeZone, timeZoneName: 'longOffset' }).formatToParts(
    new Date(instant),
  );
  const offset = parts.find(({ type }) => type === 'timeZoneName')?.value.replace('GMT', 'UTC') ?? '';
  return `${toldTime(instant, timeZone, 'en')} (${timeZone}, ${offset})`;
}
