import path from 'node:path';
import { readTerminal } from './config.ts';
import { openBrowser } from './demo/site/open-browser.ts';
import { PASSWORD, PEOPLE } from './demo/story/people.ts';
import { PHOTOS } from './demo/story/photos.ts';
import { packageRoot } from './package-root.ts';
import { startDemo, type Demo } from './start-demo.ts';
import { sayWhyNot } from './why-not.ts';

const say = (line: string) => void process.stdout.write(`${line}\n`);

/** `npm run demo [-- --no-browser]`: the program with an invented house in it, until it is stopped. */
async function run(): Promise<void> {
  const { port, isWatched } = readTerminal();
  const photoFolder = path.join(packageRoot(), 'server', 'demo', 'photos');
  const starting = startDemo({ port, photoFolder, photos: PHOTOS, now: new Date(), say });
  stopOnSignal(starting);
  const demo = await starting;
  welcome(demo);
  const [first] = demo.doors;
  if (first && isWatched && !process.argv.includes('--no-browser')) openBrowser(first.address);
}

function welcome({ origin, folder, doors }: Demo): void {
  say('\nArakabe is ready to be looked at: 谷の舟小屋, five weeks into its build. All of it is invented.\n');
  for (const { address, says } of doors) say(`  ${address.padEnd(WIDTH)} ${says}`);
  const people = Object.values(PEOPLE).map(({ email }) => email);
  say(`\nBy hand: ${origin} with the password "${PASSWORD}" as ${people.join(', ')}`);
  say(`It lies in ${folder}, and is gone when you stop this with Ctrl+C.`);
}

const WIDTH = 'http://localhost:00000/carpenter'.length;

/** Also while it is still being made ready: what was written is removed in any case. */
function stopOnSignal(starting: Promise<Demo>): void {
  let isStopping = false;
  const stop = () => {
    if (isStopping) return;
    isStopping = true;
    starting
      .then(async (demo) => {
        await demo.stop();
        say(`Removed ${demo.folder}.`);
      })
      .then(
        () => process.exit(0),
        () => process.exit(1),
      );
  };
  for (const signal of ['SIGINT', 'SIGTERM', 'SIGHUP'] as const) process.on(signal, stop);
}

run().catch((error: unknown) => {
  process.stderr.write(`${sayWhyNot(error)}\n`);
  process.exitCode = 1;
});
