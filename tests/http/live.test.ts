import { setTimeout as sleep } from 'node:timers/promises';
import { afterAll, beforeAll, expect, it } from 'vitest';
import type { Answer } from '#domain/contract/routes';
import type { HouseEvent } from '#domain/contract/house-events';
import type { HouseView, TagView, UploadOutcome } from '#domain/contract/views';
import { startLiveHouse, type Change } from '../../client/live/live-house.ts';
import { describeOverBothDatabases, type PlaceForDatabase } from '../support/databases.ts';
import { makeJpeg } from '../support/pictures.ts';
import { Client, HttpProblem, newHouse, OWNER, startServer, type TestServer } from '../support/server.ts';
import { startStreamProxy, type StreamFault, type StreamProxy } from '../support/stream-proxy.ts';

const REGION = { shape: 'rectangle', x: 0.1, y: 0.2, w: 0.3, h: 0.4 };

/** A browser's EventSource as far as it goes: reads until it is closed, says once that it broke. */
function openStream(client: Client, house: string, heard: (event: HouseEvent) => void, broken: () => void) {
  const control = new AbortController();
  const read = async () => {
    const response = await client.raw('GET', `/houses/${house}/events`, { signal: control.signal });
    if (!response.ok || !response.body) throw new Error(String(response.status));
    let text = '';
    const reader = response.body.pipeThrough(new TextDecoderStream()).getReader();
    for (let read = await reader.read(); !read.done; read = await reader.read()) {
      const messages = (text + read.value).split('\n\n');
      text = messages.pop() ?? '';
      for (const message of messages)
        if (message.startsWith('data: ')) heard(JSON.parse(message.slice(6)) as HouseEvent);
    }
    throw new Error('ended');
  };
  read().catch(() => {
    if (!control.signal.aborted) broken();
  });
  return () => control.abort();
}

describeOverBothDatabases('staying in step with a house', (make, kind) => {
  let place: PlaceForDatabase;
  let server: TestServer;
  let proxy: StreamProxy;
  let house: HouseView;
  let photo: string;
  let shots = 0;
  beforeAll(async () => {
    place = await make();
    server = await startServer(place);
    proxy = await startStreamProxy(server.running.origin);
    house = await newHouse(server.owner);
    photo = await addPhoto();
  });
  afterAll(async () => {
    await proxy.close();
    await server.close();
    await place.remove();
  });

  const addPhoto = async (): Promise<string> => {
    const bytes = await makeJpeg(900 + (shots += 1));
    const { results } = await server.owner.upload<{ results: UploadOutcome[] }>(house.id, [
      { name: 'a.jpg', bytes },
    ]);
    const [outcome] = results;
    if (!outcome || outcome.outcome === 'refused') throw new Error(JSON.stringify(outcome));
    return outcome.photo.id;
  };
  const tag = () =>
    server.owner.post<TagView>(`/photos/${photo}/tags`, {
      id: crypto.randomUUID(),
      mark: 'い一',
      stage: 'pegged',
      region: REGION,
    });
  const changes = (client: Client, after?: number) =>
    client.get<Answer<'houseChanges'>>(
      `/houses/${house.id}/changes${after === undefined ? '' : `?after=${after}`}`,
    );
  /** Somebody else's window, behind the proxy. */
  const lookOn = async (fault: StreamFault) => {
    proxy.fault = fault;
    const client = new Client(proxy.origin);
    await client.post('/session', OWNER);
    const heard: { change: Change; at: number }[] = [];
    let all = 0;
    const live = startLiveHouse({
      openStream: (hear, broken) => openStream(client, house.id, hear, broken),
      ask: (after) => changes(client, after),
      changed: (told) => {
        if (told === null) all += 1;
        // What is measured of each tag is told as well, and is another matter.
        else
          for (const change of told)
            if (change.type === 'statement') heard.push({ change, at: performance.now() });
      },
      known: { state: null },
      now: () => performance.now(),
      isVisible: true,
    });
    await sleep(300);
    return { live, heard, all: () => all };
  };

  it('answers how far the house is, and what was said since', async () => {
    const before = await changes(server.owner);
    expect(before.statements).toBeNull();
    await tag();
    const after = await changes(server.owner, before.size);
    expect(after.statements).toEqual([{ type: 'statement', seq: before.size, kind: 'tag.placed', photo }]);
    expect(after.size).toBe(before.size + 1);
    expect((await changes(server.owner, after.size)).statements).toEqual([]);
    for (let i = 0; i < 101; i++) await tag();
    expect((await changes(server.owner, after.size)).statements).toBeNull();
  });

  it('counts finished pictures, so that they can be asked for', async () => {
    // The tags of the test before are measured meanwhile, and count as well.
    await server.running.core.jobs.rested('legibility');
    const { made } = await changes(server.owner);
    await addPhoto();
    await expect.poll(async () => (await changes(server.owner)).made, { timeout: 10_000 }).toBe(made + 1);
  });

  const faults: [StreamFault, number][] = [
    ['none', 3],
    ['gathers', 4],
    ['refuses', 4],
    ['cuts', 8],
    ['gathers-later', 3],
  ];
  // What a proxy does is the same over both databases; that both announce is not.
  it.each(kind === 'server' ? faults.slice(0, 1) : faults)(
    'through a proxy that does this to the stream: %s',
    async (fault, tags) => {
      const { live, heard, all } = await lookOn(fault);
      // What is gathered after the first words is noticed when a beat does not come.
      if (fault === 'gathers-later') await sleep(8500);
      const said: number[] = [];
      for (let i = 0; i < tags; i++) {
        const { id } = await tag();
        const at = performance.now();
        await expect.poll(() => heard.length, { timeout: 5000, interval: 10 }).toBe(i + 1);
        said.push((heard[i]?.at ?? 0) - at);
        expect(id).toBeDefined();
        await sleep(370);
      }
      live.stop();
      const sorted = said.map((ms) => Math.max(0, Math.round(ms))).sort((a, b) => a - b);
      console.log(
        `${kind}, ${fault}: heard after ${sorted[sorted.length >> 1]} ms (median), ${sorted.at(-1)} ms at most`,
      );
      // Each once, none taken for 'anything may have changed'.
      const seqs = heard.map(({ change }) => (change.type === 'statement' ? change.seq : -1));
      expect(new Set(seqs).size).toBe(tags);
      expect(all()).toBe(0);
      // A second and a half between two questions, and a generous rest for a busy machine.
      expect(sorted.at(-1)).toBeLessThan(5000);
    },
    60_000,
  );

  it('returns to the stream when that works again, and asks no more', async () => {
    const { live } = await lookOn('refuses');
    await sleep(1000);
    proxy.fault = 'none';
    await expect.poll(() => proxy.counts['events'], { timeout: 10_000 }).toBeGreaterThan(1);
    await sleep(2500);
    const asked = proxy.counts['changes'];
    await sleep(3500);
    expect(proxy.counts['changes']).toBe(asked);
    live.stop();
  }, 30_000);

  it('ends the streams when a role is taken back, and does not let that person in again', async () => {
    const email = `ren-${kind}@example.org`;
    const mate = await server.join(house.id, email);
    const { people } = await server.owner.get<{ people: { id: string; email: string }[] }>(
      `/houses/${house.id}/people`,
    );
    let hears = 0;
    let isBroken = false;
    openStream(
      mate,
      house.id,
      () => (hears += 1),
      () => (isBroken = true),
    );
    await expect.poll(() => hears).toBeGreaterThan(0);
    const id = people.find((person) => person.email === email)?.id ?? '';
    await server.owner.delete(`/houses/${house.id}/people/${id}`);
    await expect.poll(() => isBroken).toBe(true);
    await expect(changes(mate)).rejects.toThrow(HttpProblem);
  });
});
