import { setTimeout as sleep } from 'node:timers/promises';
import { afterAll, beforeAll, expect, it } from 'vitest';
import { describeOverBothDatabases } from '../support/databases.ts';
import { between, seeded, type Chance } from '../support/seeded.ts';
import { ServerProcess } from '../support/server-process.ts';
import {
  checkAcceptedLines,
  checkChain,
  checkClaims,
  checkLedgerFile,
  countStated,
  readWholeLedger,
} from './check-ledger.ts';
import { checkFiles, checkPictures, checkRebuild, checkViews, countPictureless } from './check-record.ts';
import { CrewMember } from './crew.ts';
import { jpegSource } from './distinct-jpegs.ts';
import { Journal } from './journal.ts';
import { tell } from './told.ts';
import { prepareWorksite, type Worksite } from './worksite.ts';

const KILLS = Number(process.env['ARAKABE_TEST_KILLS'] ?? (process.env['CI'] === 'true' ? 4 : 6));
const SEED = Number(process.env['ARAKABE_TEST_SEED'] ?? Date.now() % 1_000_000);
const CLIENTS = 4;
/** A round takes two to three seconds on two idle cores; checking all pictures at the end takes longer. */
const LIMIT_MS = 300_000 + KILLS * 30_000;
/** Comparing all tables with a rebuild needs the database for itself, so it is done now and then and at the end. */
const REBUILD_EVERY = 5;

/**
 * The server is killed (SIGKILL) at random moments while several people upload and tag, and starts again on the
 * same folder, on one house over all kills. kill -9 leaves the system's file cache whole: what would be lost in a
 * power cut for want of an fsync cannot show here.
 */
describeOverBothDatabases('kill -9 in the middle of the work', (make, kind) => {
  const chance: Chance = seeded(SEED);
  const journal = new Journal();
  /** takenUnheard: unanswered requests that had been taken; pictureless: photos whose pictures were still to be made. */
  const tally = { killed: 0, whileStarting: 0, unanswered: 0, takenUnheard: 0, pictureless: 0 };
  let site: Worksite;
  let crew: CrewMember[];
  let server: ServerProcess;
  const verified = new Set<string>();

  beforeAll(async () => {
    console.log(`${kind}: ARAKABE_TEST_SEED=${SEED}, ${KILLS} kills`);
    site = await prepareWorksite(await make());
    const nextFile = await jpegSource();
    crew = Array.from({ length: CLIENTS }, (_, i) => {
      const own = seeded(SEED * CLIENTS + i);
      return new CrewMember(site.house, i, journal, own, nextFile);
    });
  });
  afterAll(async () => {
    await server.kill();
    await site.remove();
  });

  it(
    'loses nothing that was accepted, leaves nothing half done, and starts again by itself',
    async () => {
      server = await ServerProcess.start(site.place);
      for (let round = 1; round <= KILLS; round++)
        await workAndKill(round).catch(async (error: unknown) => {
          await sleep(500);
          const where = `Round ${round} of ARAKABE_TEST_SEED=${SEED}`;
          throw new Error(`${where}: ${String(error)}\n${server.state}`, { cause: error });
        });
      await checkEverything();
      console.table([{ database: kind, ...tally, statements: journal.claims.length }]);
      // Kills that never hit a request, or never a photo whose pictures were still to be made, would prove little.
      expect(tally.unanswered).toBeGreaterThan(KILLS / 2);
      // What a kill hits is chance; many kills must have hit all of it.
      if (KILLS >= 100) expect(Math.min(tally.pictureless, tally.takenUnheard)).toBeGreaterThan(0);
    },
    LIMIT_MS,
  );

  async function workAndKill(round: number): Promise<void> {
    const before = new Set(journal.acknowledged);
    let killed = false;
    const work = crew.map((person) => person.workUntilCutOff(site.clientOf(server), () => killed));
    // A person whom the server refuses ends the wait at once.
    await Promise.race([sleep(between(chance, 20, 1200)), ...work]);
    killed = true;
    await server.kill();
    await Promise.all(work);
    tally.killed += 1;
    tally.pictureless += await countPictureless(site.place, journal);
    if (kind === 'embedded') {
      const accepted = journal.acknowledged.filter((asked) => !before.has(asked));
      await checkAcceptedLines(site.place.dataFolder, site.house, accepted);
    }
    server = await startOrKillWhileStarting();
    await checkAfterRestart();
    expect(server.complaints).toBe('');
    if (round % REBUILD_EVERY === 0) await compareWithRebuild();
    if (round % 25 === 0) console.log(`${kind}: ${round} kills, ${journal.claims.length} statements`);
  }

  async function compareWithRebuild(): Promise<void> {
    await server.kill();
    await checkRebuild(site.place);
    server = await ServerProcess.start(site.place);
  }

  /** A start is the moment at which a lock is taken over and what is missing is made good: one in five dies in it. */
  async function startOrKillWhileStarting(): Promise<ServerProcess> {
    while (chance() < 0.2) {
      const early = ServerProcess.launch(site.place);
      await sleep(between(chance, 200, 1800));
      await early.kill();
      tally.whileStarting += 1;
    }
    return ServerProcess.start(site.place);
  }

  async function checkAfterRestart(): Promise<void> {
    const client = site.clientOf(server);
    const found = await readWholeLedger(client, site.house);
    checkClaims(found, journal);
    tally.takenUnheard += countStated(found, journal.unanswered);
    for (const person of crew) if (await person.repeatUnanswered(client)) tally.unanswered += 1;
    const ledger = await readWholeLedger(client, site.house);
    expect(journal.unanswered).toEqual([]);
    checkChain(site.house, ledger);
    checkClaims(ledger, journal);
    if (kind === 'embedded') await checkLedgerFile(site.place.dataFolder, site.house, ledger);
    const told = tell(ledger.entries);
    const fresh = [...told.photos.keys()].filter((photo) => !verified.has(photo));
    await checkFiles(site.place, told, fresh);
    await checkViews(client, site.house, told, fresh);
    await checkPictures(client, told, fresh);
    for (const photo of fresh) verified.add(photo);
  }

  /** Everything of all rounds once more, not only what the last one added. */
  async function checkEverything(): Promise<void> {
    const client = site.clientOf(server);
    const ledger = await readWholeLedger(client, site.house);
    const told = tell(ledger.entries);
    const photos = [...told.photos.keys()];
    checkClaims(ledger, journal);
    await checkFiles(site.place, told, photos);
    await checkViews(client, site.house, told, photos);
    await checkPictures(client, told, photos);
    expect(await server.stop()).toEqual({ code: 0, signal: null });
    await checkRebuild(site.place);
  }
});
