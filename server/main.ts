import { readConfig } from './config.ts';
import { serve, type Running } from './serve.ts';
import { sayWhyNot } from './why-not.ts';

/** Says a line to the person at the terminal, beside the log. */
function say(line: string): void {
  process.stdout.write(`${line}\n`);
}

async function main(): Promise<void> {
  const running = await serve(readConfig());
  if (running.origin) say(`Arakabe is at ${running.origin}`);
  else say('Arakabe is making pictures.');
  if (running.firstLink) say(`Make the first account here, once: ${running.firstLink}`);
  stopOnSignal(running);
}

function stopOnSignal(running: Running): void {
  let stopping = false;
  const stop = () => {
    if (stopping) return;
    stopping = true;
    running.stop().then(
      () => process.exit(0),
      () => process.exit(1),
    );
  };
  process.on('SIGINT', stop);
  process.on('SIGTERM', stop);
}

main().catch((error: unknown) => {
  process.stderr.write(`${sayWhyNot(error)}\n`);
  process.exit(1);
});
