import { IN_WALL, kindsOf, type Usual } from '../kind-rows.ts';

/** Hidden with the frame, and asked for later: where it runs is known only from before it was covered. */
const SERVICE: Usual = {
  family: 'service',
  track: 'lath',
  lies: 'none',
  section: null,
  hiddenBy: [...IN_WALL, 'floor', 'ceiling'],
};
const UNDER = { hiddenBy: ['floor'] } as const;
const INSULATION: Usual = {
  ...SERVICE,
  family: 'insulation',
  hiddenBy: [...SERVICE.hiddenBy, 'roof-boards'],
};
const OUTER = { hiddenBy: ['plaster-over-posts'] } as const;
const MEMBRANE: Usual = { ...SERVICE, family: 'membrane' };

export const SERVICES = [
  ...kindsOf(SERVICE, [
    ['電線', 'でんせん', 'densen', 'cable', 'ケーブル|屋内配線|electric cable|wire|wiring'],
    ['弱電線', 'じゃくでんせん', 'jakudensen', 'data cable', '弱電|lan cable|low-voltage cable'],
    ['電線管', 'でんせんかん', 'densenkan', 'conduit', 'pf管|cd管'],
    [
      'スイッチボックス',
      'スイッチボックス',
      'suitchibokkusu',
      'outlet box',
      'コンセントボックス|back box|junction box',
    ],
    ['アース線', 'あーすせん', 'āsusen', 'earth wire', '接地線|ground wire'],
    ['給水管', 'きゅうすいかん', 'kyūsuikan', 'water pipe', '水道管|supply pipe|pipe'],
    ['給湯管', 'きゅうとうかん', 'kyūtōkan', 'hot water pipe'],
    ['排水管', 'はいすいかん', 'haisuikan', 'drain pipe', 'waste pipe|drain'],
    ['通気管', 'つうきかん', 'tsūkikan', 'vent pipe', 'ベント管|soil vent'],
    ['ガス管', 'がすかん', 'gasukan', 'gas pipe'],
    ['冷媒管', 'れいばいかん', 'reibaikan', 'refrigerant line', '冷媒配管'],
    [
      '床暖房管',
      'ゆかだんぼうかん',
      'yukadanbōkan',
      'floor heating pipe',
      '床暖房|underfloor heating',
      UNDER,
    ],
    ['換気ダクト', 'かんきだくと', 'kankidakuto', 'ventilation duct', 'ダクト|duct'],
    ['スリーブ', 'スリーブ', 'surību', 'pipe sleeve', 'sleeve'],
  ]),
  ...kindsOf(INSULATION, [
    ['断熱材', 'だんねつざい', 'dannetsuzai', 'insulation', '断熱|thermal insulation'],
    ['グラスウール', 'グラスウール', 'gurasuūru', 'glass wool', 'fibreglass|fiberglass|mineral wool'],
    ['羊毛断熱材', 'ようもうだんねつざい', 'yōmōdannetsuzai', 'sheep wool', '羊毛|wool insulation'],
    [
      '木繊維断熱材',
      'もくせんいだんねつざい',
      "mokusen'idannetsuzai",
      'wood fibre board',
      'ウッドファイバー|wood fiber board',
    ],
    ['セルロースファイバー', 'セルロースファイバー', 'serurōsufaibā', 'cellulose', 'blown cellulose'],
    ['発泡断熱板', 'はっぽうだんねつばん', 'happōdannetsuban', 'foam board', '押出法ポリスチレン|rigid foam'],
    ['気流止め', 'きりゅうどめ', 'kiryūdome', 'draught stop', '気流止|draft stop'],
  ]),
  ...kindsOf(MEMBRANE, [
    [
      '防湿シート',
      'ぼうしつしーと',
      'bōshitsushīto',
      'vapour barrier',
      '防湿フィルム|気密シート|vapor barrier|vapour control layer',
    ],
    [
      '透湿防水シート',
      'とうしつぼうすいしーと',
      'tōshitsubōsuishīto',
      'breather membrane',
      '防風シート|house wrap|housewrap',
      OUTER,
    ],
    ['防水紙', 'ぼうすいし', 'bōsuishi', 'building paper', 'アスファルトフェルト|felt|tar paper', OUTER],
    ['ルーフィング', 'ルーフィング', 'rūfingu', 'roofing underlay', '下葺き|underlayment', { hiddenBy: [] }],
    ['気密テープ', 'きみつてーぷ', 'kimitsutēpu', 'airtight tape', '防水テープ|sealing tape'],
    ['水切り', 'みずきり', 'mizukiri', 'flashing', '水切', OUTER],
    ['防蟻剤', 'ぼうぎざい', 'bōgizai', 'termite treatment', '防蟻処理|防腐防蟻', UNDER],
  ]),
];
