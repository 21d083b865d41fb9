import { spawn, type ChildProcess } from 'node:child_process';
import path from 'node:path';
import type { DatabaseConfig } from '../../server/config.ts';
import { ROOT } from './project-files.ts';
import { OWNER } from './server.ts';

const START_LIMIT_MS = 60_000;

export interface Place {
  readonly dataFolder: string;
  readonly database: DatabaseConfig;
  /** Without an owner the first account is made through the printed link. */
  readonly owner?: boolean;
  readonly environment?: NodeJS.ProcessEnv;
}

export type Ending = { readonly code: number | null; readonly signal: NodeJS.Signals | null };

/** The real server as `npm start` runs it, in a process of its own. */
export class ServerProcess {
  readonly #child: ChildProcess;
  readonly ended: Promise<Ending>;
  #said = '';
  #complained = '';

  private constructor(place: Place) {
    this.#child = spawn(process.execPath, [path.join(ROOT, 'dist', 'server', 'main.js')], {
      cwd: ROOT,
      env: environmentOf(place),
      stdio: ['ignore', 'pipe', 'pipe'],
    });
    this.#child.stdout?.setEncoding('utf8').on('data', (text: string) => (this.#said += text));
    this.#child.stderr?.setEncoding('utf8').on('data', (text: string) => (this.#complained += text));
    // No server stays behind when the tests themselves are ended.
    const atExit = () => void this.#child.kill('SIGKILL');
    process.once('exit', atExit);
    this.ended = new Promise((resolve) =>
      this.#child.once('close', (code, signal) => {
        process.off('exit', atExit);
        resolve({ code, signal });
      }),
    );
  }

  /** Does not wait: for a server that is not expected to come up. */
  static launch(place: Place): ServerProcess {
    return new ServerProcess(place);
  }

  static async start(place: Place): Promise<ServerProcess> {
    const server = new ServerProcess(place);
    await server.untilUp();
    return server;
  }

  async untilUp(): Promise<void> {
    const limit = Date.now() + START_LIMIT_MS;
    while (!this.isUp) {
      if (this.#child.exitCode !== null || this.#child.signalCode !== null || Date.now() > limit)
        throw new Error(`The server did not come up. It said: ${this.#said}${this.#complained}`);
      await new Promise((resolve) => setTimeout(resolve, 10));
    }
  }

  /** The address is printed once the server listens; the link, if any, is the line after it. */
  get isUp(): boolean {
    return /Arakabe is at (\S+)\n/.test(this.#said);
  }

  get origin(): string {
    return /Arakabe is at (\S+)\n/.exec(this.#said)?.[1] ?? '';
  }

  get firstLink(): string | null {
    return /\/link\/(\S+)\n/.exec(this.#said)?.[1] ?? null;
  }

  get pid(): number {
    return this.#child.pid ?? 0;
  }

  /** The log and what went to standard error. */
  get complaints(): string {
    return this.#said.replace(/^(Arakabe is at|Make the first account).*\n/gm, '') + this.#complained;
  }

  get standardError(): string {
    return this.#complained;
  }

  /** For the report of a failed test: whether it runs, and all that it said. */
  get state(): string {
    const { exitCode, signalCode } = this.#child;
    const ended = exitCode === null && signalCode === null ? 'runs' : `ended (${exitCode ?? signalCode})`;
    return `server ${this.pid} ${ended}: ${this.#said}${this.#complained}`;
  }

  /** Without any warning, as a power cut of the process: SIGKILL to this one process. */
  async kill(): Promise<void> {
    this.#child.kill('SIGKILL');
    await this.ended;
  }

  async stop(): Promise<Ending> {
    this.#child.kill('SIGTERM');
    return this.ended;
  }
}

function environmentOf({ dataFolder, database, owner = true, environment }: Place): NodeJS.ProcessEnv {
  return {
    PATH: process.env['PATH'],
    HOME: process.env['HOME'],
    PORT: '0',
    ARAKABE_DATA: dataFolder,
    ARAKABE_LOG: 'error',
    ...(database.kind === 'server' && { DATABASE_URL: database.url }),
    ...(owner && { ARAKABE_OWNER_EMAIL: OWNER.email, ARAKABE_OWNER_PASSWORD: OWNER.password }),
    ...environment,
  };
}
