import { randomUUID } from 'node:crypto';
import type {
  CoveringView,
  HouseView,
  LedgerEntryView,
  TagView,
  UploadOutcome,
} from '#domain/contract/views';
import type { Stage } from '#domain/frame/stage';
import { Client } from '../support/server.ts';
import { PASSWORD } from './hands.ts';
import type { HouseThings } from './screens.ts';
import { sitePhotos, type PhotoName } from './site-photos.ts';

export const KEEPER = 'mio@example.org';
/** Long words without a gap, as they come in real schedules: they must not widen a phone's screen. */
const SCHEDULE = [
  '番付,部材,名称,場所,備考',
  'い一,柱,隅柱,北の壁,',
  'い二,柱,,北の壁,',
  'い三,通し柱,,北の壁,檜五寸角',
  'い通り地貫,地貫,,北の壁,',
  'は又五通り東側小屋組二重梁上束,小屋束,,小屋裏の北東の隅で棟木の真下にあたるところ,',
  'NORTH-ELEVATION-SECOND-FLOOR-RAIL-0001,腰貫,Connecting_rail_between_posts,Gable_wall_second_storey,',
].join('\r\n');
const LONG_NAME = 'NORTH-ELEVATION-SECOND-FLOOR-RAIL-0001';

/** A house with members, photos, tags and coverings, made by the API: for tests that are about what comes after. */
export interface Site {
  readonly client: Client;
  readonly origin: string;
  readonly house: HouseView;
  readonly photos: Record<PhotoName, string>;
  readonly fileNames: Record<PhotoName, string>;
  readonly things: HouseThings;
  tag(photo: PhotoName, mark: string, stage: Stage): Promise<TagView>;
  /** All entries of the ledger of this kind, as written. */
  ledger(kind: string): Promise<LedgerEntryView[]>;
}

export async function prepareSite(origin: string, firstLink: string, name: string): Promise<Site> {
  const client = new Client(origin);
  await client.post(`/links/${firstLink}`, { name: 'Mio', email: KEEPER, password: PASSWORD });
  const house = await client.post<HouseView>('/houses', { id: randomUUID(), name, zone: 'Asia/Tokyo' });
  const base = `/houses/${house.id}`;
  await client.raw('POST', `${base}/schedule?fileName=frame.csv`, {
    body: SCHEDULE,
    headers: { 'content-type': 'text/csv' },
  });
  const { photos, fileNames } = await addPhotos(client, house.id);
  const tag = (photo: PhotoName, mark: string, stage: Stage) =>
    client.post<TagView>(`/photos/${photos[photo]}/tags`, {
      id: randomUUID(),
      mark,
      stage,
      region: { shape: 'rectangle', x: 0.1, y: 0.1, w: 0.15, h: 0.3 },
    });
  await tag('house', 'い三', 'pegged');
  await tag('cranes', 'い三', 'raised');
  await tag('deck', LONG_NAME, 'pegged');
  const { id: covering } = await client.post<CoveringView>(`${base}/coverings`, {
    id: randomUUID(),
    name: '北の壁 荒壁 裏返し前（東の妻から西の妻まで）',
    kind: 'plaster',
    plannedDay: '2026-04-20',
    hides: ['い二', 'い三', LONG_NAME].map((mark) => ({ mark, least: 'pegged' })),
  });
  await client.put(`${base}/days/2002-02-24/note`, { text: '晴れ。三番の柱の込み栓を打った。' });
  return {
    ...{ client, origin },
    house,
    photos,
    fileNames,
    tag,
    things: { house: base, photo: photos.house, mark: 'い三', covering, day: '2002-02-24' },
    ledger: async (kind) => {
      const { entries } = await client.get<{ entries: LedgerEntryView[] }>(`${base}/ledger`);
      return entries.filter((entry) => entry.kind === kind);
    },
  };
}

async function addPhotos(client: Client, house: string): Promise<Pick<Site, 'photos' | 'fileNames'>> {
  const files = await sitePhotos();
  const send = async (name: PhotoName): Promise<string> => {
    const { results } = await client.upload<{ results: UploadOutcome[] }>(house, [
      { name: files[name].name, bytes: files[name].buffer },
    ]);
    const [outcome] = results;
    if (!outcome || outcome.outcome === 'refused') throw new Error(`${name} was refused.`);
    return outcome.photo.id;
  };
  const [deck, box, cranes, suburb] = [
    await send('deck'),
    await send('box'),
    await send('cranes'),
    await send('house'),
  ];
  const { deck: d, box: b, cranes: c, house: h } = files;
  return {
    photos: { deck, box, cranes, house: suburb },
    fileNames: { deck: d.name, box: b.name, cranes: c.name, house: h.name },
  };
}
