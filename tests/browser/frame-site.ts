import { randomUUID } from 'node:crypto';
import type { HouseView, UploadOutcome } from '#domain/contract/views';
import type { Stage } from '#domain/frame/stage';
import { makeJpeg, takenAt } from '../support/pictures.ts';
import { Client } from '../support/server.ts';
import { PASSWORD } from './hands.ts';
import { KEEPER } from './site.ts';

const BAY = 1820;
const FIRST = ['い', 'ろ', 'は', 'に'];
const SECOND = ['一', '二', '三', '四'];
const lines = (labels: readonly string[]) => labels.map((label, i) => ({ label, at: i * BAY }));

/** Three bays each way, a floor, an upper floor and a wall plate. */
export const GRID = {
  first: { lines: lines(FIRST), runs: 'leftward' },
  second: { lines: lines(SECOND), runs: 'downward' },
  levels: [
    { label: '1F', height: 450 },
    { label: '2F', height: 3250 },
    { label: '軒', height: 5900 },
  ],
  unit: 'mm',
};

const HEADINGS = 'mark,kind,from,to,level,base,top,width,depth';

/** Posts around, sills, girths, plates, rails of the wall on い, joists of the upper floor, rafters, two askew. */
function schedule(): string {
  const around = FIRST.flatMap((a) => SECOND.map((b) => [a, b] as const)).filter(
    ([a, b]) => 'いに'.includes(a) || '一四'.includes(b),
  );
  const posts = around.flatMap(([a, b]) => {
    const isCorner = 'いに'.includes(a) && '一四'.includes(b);
    return isCorner
      ? [`${a}${b},通し柱,${a}${b},,1F,0,5450,150,150`]
      : [`${a}${b},管柱,${a}${b},,1F,,,120,120`, `${a}${b}上,管柱,${a}${b},,2F,,,120,120`];
  });
  const level = (kind: string, mark: string, at: string, section: string, heights = ',') =>
    ['い', 'に'].flatMap((a) => [`${a}通り${mark},${kind},${a}一,${a}四,${at},${heights},${section}`]);
  const across = (kind: string, mark: string, at: string, section: string) =>
    ['一', '四'].map((b) => `${b}通り${mark},${kind},い${b},に${b},${at},,,${section}`);
  const rails = ['地貫', '胴貫', '内法貫'].map(
    (name, i) => `い${name},${name},い一,い四,1F,${350 + i * 800},,24,105`,
  );
  const joists = ['二', '三'].map((b) => `${b}通り梁,梁,い${b},に${b},2F,,,120,240`);
  const rafters = SECOND.flatMap((b) => [
    `${b}垂木い,垂木,い${b},又ろ${b},軒,0,1400,45,60`,
    `${b}垂木に,垂木,に${b},又ろ${b},軒,0,1400,45,60`,
  ]);
  return [
    HEADINGS,
    ...posts,
    ...level('土台', '土台', '1F', '120,120'),
    ...across('土台', '土台', '1F', '120,120'),
    ...level('胴差', '胴差', '2F', '120,240'),
    ...across('胴差', '胴差', '2F', '120,240'),
    ...level('桁', '桁', '軒', '120,180'),
    ...rails,
    ...joists,
    ...rafters,
    'に地貫,地貫,に一,に四,1F,350,,24,105',
    '棟木,棟木,又ろ一,又ろ四,軒,1400,,120,180',
    '火打い一,火打梁,い二,ろ一,2F,,,90,90',
    '筋違い三,筋違,い三,い四,1F,100,2600,45,90',
    '込み栓,込み栓,,,,,,,',
    '添え柱,柱,ほ九,,1F,,,,',
  ].join('\r\n');
}

export interface FrameSite {
  readonly client: Client;
  readonly house: string;
  /** A photo of that day with these tags; resolves to its id. */
  readonly tag: (day: string, marks: readonly string[], stage: Stage, stretch?: object) => Promise<string>;
}

/** A house with a grid, its frame, a wall that will be plastered, one that is, and photos of three days. */
export async function prepareFrame(origin: string, firstLink: string): Promise<FrameSite> {
  const client = new Client(origin);
  await client.post(`/links/${firstLink}`, { name: 'Mio', email: KEEPER, password: PASSWORD });
  const { id } = await client.post<HouseView>('/houses', {
    id: randomUUID(),
    name: 'Boathouse',
    zone: 'Asia/Tokyo',
  });
  const house = `/houses/${id}`;
  await client.put(`${house}/grid`, GRID);
  await client.raw('POST', `${house}/schedule?fileName=frame.csv`, {
    body: schedule(),
    headers: { 'content-type': 'text/csv' },
  });
  let seed = 0;
  const tag: FrameSite['tag'] = async (day, marks, stage, stretch) => {
    seed += 1;
    const bytes = await makeJpeg(seed, takenAt(`${day}T10:00:00`), { width: 640, height: 480 });
    const { results } = await client.upload<{ results: UploadOutcome[] }>(id, [
      { name: `photo-${seed}.jpg`, bytes },
    ]);
    const [outcome] = results;
    if (!outcome || outcome.outcome === 'refused') throw new Error('The photo was refused.');
    for (const mark of marks)
      await client.post(`/photos/${outcome.photo.id}/tags`, {
        ...{ id: randomUUID(), mark, stage, stretch: stretch ?? null },
        region: { shape: 'rectangle', x: 0.1, y: 0.1, w: 0.5, h: 0.5 },
      });
    return outcome.photo.id;
  };
  return { client, house, tag };
}

export const wall = (family: string, line: string, from: string, to: string, bottom = 450, top = 3250) => ({
  ...{ shape: 'wall', family, line, from, to, bottom, top, face: 'both', over: 'between-posts' },
});
