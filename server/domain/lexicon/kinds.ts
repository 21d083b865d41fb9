import type { Track } from '../frame/stage.ts';

/** One kind of member under its names. `also` holds further spellings that people type. */
export interface Kind {
  readonly id: string;
  readonly kanji: string;
  readonly kana: string;
  readonly romaji: string;
  readonly en: string;
  readonly also: readonly string[];
  readonly track: Track;
}

type Row = readonly [
  id: string,
  kanji: string,
  kana: string,
  romaji: string,
  en: string,
  track: Track,
  ...also: string[],
];

/**
 * Names, glosses and tracks: common practice of Japanese and Western timber framing. What stands in
 * the plane of an earthen wall has track 'wall': posts too, since their mortises, wedges and lath
 * holes are last seen before the first coat. A house that builds otherwise states the track of a
 * member in its schedule.
 */
const ROWS: readonly Row[] = [
  ['hashira', '柱', 'はしら', 'hashira', 'post', 'wall', 'column'],
  ['toshibashira', '通し柱', 'とおしばしら', 'tōshibashira', 'through post', 'wall', 'toshibashira', '通柱'],
  ['kudabashira', '管柱', 'くだばしら', 'kudabashira', 'single-storey post', 'wall'],
  ['daikokubashira', '大黒柱', 'だいこくばしら', 'daikokubashira', 'main post', 'wall'],
  ['mabashira', '間柱', 'まばしら', 'mabashira', 'stud', 'wall'],
  [
    'nuki',
    '貫',
    'ぬき',
    'nuki',
    'tie rail',
    'wall',
    '通し貫',
    '通貫',
    'through-tenon rail',
    'penetrating tie',
  ],
  ['jinuki', '地貫', 'じぬき', 'jinuki', 'foot tie rail', 'wall'],
  ['koshinuki', '腰貫', 'こしぬき', 'koshinuki', 'waist tie rail', 'wall', '胴貫'],
  ['uchinorinuki', '内法貫', 'うちのりぬき', 'uchinorinuki', 'head tie rail', 'wall'],
  ['tenjonuki', '天井貫', 'てんじょうぬき', 'tenjōnuki', 'ceiling tie rail', 'wall', 'tenjonuki'],
  ['sujikai', '筋かい', 'すじかい', 'sujikai', 'brace', 'wall', '筋交い', '筋違', '筋違い', 'diagonal brace'],
  ['dosashi', '胴差', 'どうさし', 'dōsashi', 'girt', 'wall', 'dosashi', '胴差し'],
  ['magusa', 'まぐさ', 'まぐさ', 'magusa', 'lintel', 'wall', '楣', 'header'],
  ['madodai', '窓台', 'まどだい', 'madodai', 'window sill', 'wall'],
  ['dobuchi', '胴縁', 'どうぶち', 'dōbuchi', 'furring strip', 'wall', 'dobuchi'],
  ['dodai', '土台', 'どだい', 'dodai', 'sill', 'timber', 'sill beam', 'sill plate', 'ground sill'],
  ['hari', '梁', 'はり', 'hari', 'beam', 'timber', 'tie beam'],
  ['koyabari', '小屋梁', 'こやばり', 'koyabari', 'roof beam', 'timber'],
  ['keta', '桁', 'けた', 'keta', 'wall plate', 'timber', '軒桁', 'plate', 'eaves beam', 'top plate'],
  ['moya', '母屋', 'もや', 'moya', 'purlin', 'timber'],
  ['munagi', '棟木', 'むなぎ', 'munagi', 'ridge beam', 'timber', 'ridge', 'ridge pole'],
  ['sumigi', '隅木', 'すみぎ', 'sumigi', 'hip rafter', 'timber'],
  ['taruki', '垂木', 'たるき', 'taruki', 'rafter', 'timber', '棰', 'common rafter'],
  ['koyazuka', '小屋束', 'こやづか', 'koyazuka', 'roof strut', 'timber', 'strut', 'queen post', 'king post'],
  ['hiuchi', '火打', 'ひうち', 'hiuchi', 'horizontal angle brace', 'timber', '火打ち', '火打梁', '火打土台'],
  ['hozue', '方杖', 'ほうづえ', 'hōzue', 'knee brace', 'timber', 'hozue'],
  ['nobuchi', '野縁', 'のぶち', 'nobuchi', 'ceiling joist', 'timber'],
  ['obiki', '大引', 'おおびき', 'ōbiki', 'floor beam', 'floor', 'obiki', 'oobiki', '大引き', 'sleeper'],
  ['neda', '根太', 'ねだ', 'neda', 'joist', 'floor', 'floor joist'],
  ['yukazuka', '床束', 'ゆかづか', 'yukazuka', 'floor post', 'floor'],
  [
    'negarami',
    '根がらみ',
    'ねがらみ',
    'negarami',
    'floor post tie',
    'floor',
    '根絡み',
    '根がらみ貫',
    '根絡み貫',
  ],
  ['komai', '小舞', 'こまい', 'komai', 'lath', 'lath', '木舞', '小舞竹', '竹小舞', 'bamboo lath', 'wattle'],
  ['mawatashi', '間渡し竹', 'まわたしだけ', 'mawatashi', 'lath carrier', 'lath', '間渡し', '間渡竹'],
  ['kizuri', '木摺', 'きずり', 'kizuri', 'wood lath', 'lath', '木ずり', '木摺り'],
];

export const KINDS: readonly Kind[] = ROWS.map(([id, kanji, kana, romaji, en, track, ...also]) => ({
  id,
  kanji,
  kana,
  romaji,
  en,
  also,
  track,
}));

export function spellings(kind: Kind): readonly string[] {
  return [kind.kanji, kind.kana, kind.romaji, kind.en, ...kind.also];
}
