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
  const ending = new AbortController();
  const order = { port, photoFolder, photos: PHOTOS, now: new Date(), signal: ending.signal, say };
  const starting = startDemo(order);
  stopOnSignal(starting, ending);
  const demo = await starting;
  welcome(demo);
  const [first] = demo.doors;
  if (first && isWatched && !process.argv.includes('--no-browser')) openBrowser(first.address);
}

function welcome({ origin, folder, doors }: Demo): void {
  say(
    '\nArakabe is ready to be looked at: 谷の舟小屋, four weeks after its raising. All of it is invented.\n',
  );
  for (const { address, says } of doors) say(`  ${address.padEnd(WIDTH)} ${says}`);
  say('\nA browser is one person at a time: to be two at once, open the other address in a private window.');
  say('日本語の画面は右上で選べます。一つのブラウザーでは一度に一人。もう一人はプライベートウィンドウで。');
  const people = Object.values(PEOPLE).map(({ email }) => email);
  say(`\nBy hand: ${origin} with the password "${PASSWORD}" as ${people.join(', ')}`);
  say(`It lies in ${folder}, and is gone when you stop this with Ctrl+C.`);
}

const WIDTH = 'http://localhost:00000/carpenter'.length;

/** Also while it is still being made ready: what was written is removed in any case. */
function stopOnSignal(starting: Promise<Demo>, ending: AbortController): void {
  const stop = async () => {
    if (ending.signal.aborted) return;
    ending.abort();
    // Where it had not come up it has removed its folder itself.
    const demo = await starting.catch(() => null);
    await demo?.stop();
    say(`Removed ${demo?.folder ?? 'what it had written'}.`);
    process.exit(0);
  };
  for (const signal of ['SIGINT', 'SIGTERM', 'SIGHUP'] as const) process.on(signal, () => void stop());
}

run().catch((error: unknown) => {
  if (error instanceof Error && error.name === 'AbortError') return;
  process.stderr.write(`${sayWhyNot(error)}\n`);
  process.exitCode = 1;
});
