import type { AboutRows } from './about-kind.ts';

export const ABOUT_BEAMS: AboutRows = {
  hari: [
    [
      'Spans across the house and carries floor or roof.',
      'Lapped or dovetailed over the plate, or tenoned into posts with draw keys; tied by strap bolts.',
      'Both ends with key, peg or bolt, and every splice.',
    ],
    [
      '建物を横切って渡り、床や屋根を受ける。',
      '桁に渡り腮や蟻で掛けるか、柱に差して車知栓で締める。羽子板ボルトで引く。',
      '両端の栓・ボルトと、すべての継手。',
    ],
  ],
  obari: [
    [
      'The large beam that carries the others.',
      'Tenoned into posts, keyed or bolted; smaller beams are dropped in.',
      'Its ends, and each beam let into it.',
    ],
    [
      'ほかの梁を受ける大きな梁。',
      '柱に差して栓やボルトで締める。小梁は上から落とし込む。',
      '両端と、掛けた小梁の仕口。',
    ],
  ],
  kobari: [
    [
      'Spans between main beams.',
      'Dropped into the main beam by a housed dovetail.',
      'Both dovetails seen from above.',
    ],
    ['大梁の間に渡す梁。', '大梁に大入れ蟻掛けで落とし込む。', '上から見た両端の蟻。'],
  ],
  yukabari: [
    [
      'Carries the upper floor.',
      'Housed dovetail or tenon at the ends, with strap bolts.',
      'Ends with bolts tightened, before floor above and ceiling below.',
    ],
    [
      '二階の床を受ける。',
      '両端を蟻掛けか枘差しとし、羽子板ボルトで引く。',
      '上の床と下の天井を張る前に、両端と締めたボルト。',
    ],
  ],
  dosashi: [
    [
      'Ties the posts at the height of the upper floor and carries it along the outer wall.',
      'Tenoned into through posts and keyed; spliced beyond single-storey posts.',
      'Joints at through posts from both sides, and splices.',
    ],
    [
      '二階の床の高さで外まわりの柱をつなぎ、床を受ける。',
      '通し柱に差して栓や金物で引き、管柱の上で継ぐ。',
      '通し柱との仕口を両側から。継手。',
    ],
  ],
  koyabari: [
    [
      'Spans below the roof and carries its struts.',
      'Lapped over the plates, with strap bolts; struts stand on it in mortises.',
      'Both ends, splices, and the mark.',
    ],
    [
      '屋根の下に渡り、小屋束を受ける。',
      '桁に掛けて羽子板ボルトで引く。束は枘で立てる。',
      '両端、継手、番付。',
    ],
  ],
  ushibari: [
    [
      'Runs along the house under the roof beams and halves their span.',
      'Roof beams are lapped over it and pegged.',
      'Each crossing, and its bearing on the posts.',
    ],
    [
      '小屋梁の下を桁行に通り、その中ほどを受ける。',
      '小屋梁を渡り腮で載せ、栓で留める。',
      '各交差と、柱への載り。',
    ],
  ],
  shikibari: [
    [
      'Carries the ends of lapped roof beams.',
      'The beams meet over it in a lapped scarf, pegged.',
      'Each scarf over it, with its pegs.',
    ],
    [
      '投掛梁などの端を下で受ける。',
      '上で梁どうしを台持ち継ぎとし、だぼや栓で留める。',
      '上に載る継手と、その栓。',
    ],
  ],
  nagekakebari: [
    [
      'A roof beam whose inner end lies on a bearing beam.',
      'Lapped and scarfed over the bearing beam, with dowels.',
      'The scarf from the side and from above.',
    ],
    ['内側の端を敷梁に載せ掛ける小屋梁。', '敷梁の上で台持ち継ぎとし、だぼを入れる。', '継手を横と上から。'],
  ],
  marutabari: [
    [
      'A log, left round, as a roof beam; its crown turned up.',
      'Scribed to what it crosses; lapped and pegged.',
      'The scribed joints all round.',
    ],
    ['丸太のまま、背を上にして使う小屋梁。', '交わる材に光付けて渡り腮とし、栓で留める。', '光付けの四方。'],
  ],
  taikobari: [
    [
      'A log sawn on two sides, as a beam.',
      'Lapped over the plate or tenoned into posts.',
      'Both ends, and splices.',
    ],
    ['両側を落とした丸太の梁。', '桁に渡り腮で掛けるか、柱に差す。', '両端と継手。'],
  ],
  noboribari: [
    [
      'Runs up the slope of the roof and carries it without struts.',
      'Notched over plate and ridge, bolted against sliding.',
      'Foot and head, with bolts or plates.',
    ],
    [
      '屋根の勾配なりに登り、束なしで屋根を受ける。',
      '桁と棟木に欠き込み、滑らないようボルトで留める。',
      '上下の端と、ボルト・金物。',
    ],
  ],
  tsumabari: [
    [
      'Ties the two plates at the gable.',
      'Tenoned or dovetailed at the corner post, strapped.',
      'Both corners with their straps or keys.',
    ],
    ['妻側で両方の桁をつなぐ。', '隅で枘差しか蟻掛けとし、金物で引く。', '両隅の仕口と金物・栓。'],
  ],
  tsunagibari: [
    [
      'Ties two parts of the frame that would move apart.',
      'Tenoned and keyed or pegged.',
      'Both ends with key or peg.',
    ],
    ['離れようとする二つの部分をつなぐ。', '枘差しとし、車知栓や込み栓で締める。', '両端の栓。'],
  ],
  tobibari: [
    [
      'A beam above the others that bridges between them.',
      'Stands on struts or is lapped over beams.',
      'What it bears on, and how it is held.',
    ],
    ['ほかの梁の上に飛ばして渡す梁。', '束の上か梁の上に渡り腮で掛ける。', '載り先と、留め方。'],
  ],
  koryo: [
    [
      'A slightly arched, carved beam, as in temples.',
      'Tenoned into the posts, pegged.',
      'The tenons before the shoulders close.',
    ],
    ['社寺などの、やや反った化粧の梁。', '柱に枘差しとし、栓で留める。', '胴付きが閉じる前の枘。'],
  ],
  buresama: [
    [
      'Carries the wall above a wide opening or a jetty.',
      'Tenoned and pegged into posts, or lying on joist ends.',
      'Bearings, pegs, and the studs that stand on it.',
    ],
    [
      '広い開口や張り出しの上で、上の壁を受ける西洋の梁。',
      '柱に枘差し込み栓とするか、根太の端に載せる。',
      '載り、込み栓、上に立つ間柱。',
    ],
  ],
  doragonbimu: [
    [
      'Runs diagonally to the corner where a floor juts out on two sides.',
      'Tenoned into a main beam; short joists are tenoned into it.',
      'Both ends, and each joist tenon.',
    ],
    [
      '二方向に床が張り出す隅へ、斜めに渡す西洋の梁。',
      '大梁に枘で差し、短い根太をこれに差す。',
      '両端と、各根太の枘。',
    ],
  ],
  keta: [
    [
      'Lies on the posts along the eaves and carries rafters and beam ends.',
      'Posts are tenoned in from below and pegged; spliced by a hooked or lapped scarf.',
      'Splices with keys or pegs, and post heads.',
    ],
    [
      '軒に沿って柱の上に載り、垂木や梁の端を受ける。',
      '柱は長枘込み栓とし、追掛け大栓継ぎなどで継ぐ。',
      '継手の栓と、柱頭。',
    ],
  ],
  tsumageta: [
    [
      'Lies on the posts of the gable wall.',
      'Crossed with the wall plate at the corner, pegged or bolted.',
      'Both corners.',
    ],
    ['妻側の柱の上に載る桁。', '隅で桁と組み、栓やボルトで留める。', '両隅の組み手。'],
  ],
  shikigeta: [
    [
      'A plate on which others bear.',
      'Tenons of the posts below; lapped by what lies on it.',
      'Bearings and splices.',
    ],
    ['上の材の端を受ける桁。', '柱の枘で受け、上の材は渡り腮で載せる。', '載りと継手。'],
  ],
  dashigeta: [
    [
      'A plate outside the wall that carries wide eaves.',
      'Lies on the ends of beams that jut out; notched and pegged.',
      'Each bearing, from below.',
    ],
    [
      '壁の外に出して深い軒を受ける桁。',
      '突き出した梁の端に欠き込んで載せ、栓で留める。',
      '各受けを下から。',
    ],
  ],
  gagyo: [
    [
      'The outermost purlin, under the rafters of deep eaves.',
      'Lies in brackets; scarfed in its length.',
      'Scarfs, and its seat in each bracket.',
    ],
    ['深い軒の垂木を受ける、最も外側の桁。', '組物に載せ、長さ方向は継手で継ぐ。', '継手と、組物への載り。'],
  ],
  atamatsunagi: [
    [
      'A second plate that ties the top of framed walls.',
      'Nailed, with its joints away from those below.',
      'Nails, and laps at the corners.',
    ],
    ['枠組の壁の上端をつなぐ二枚目の上枠。', '下の継ぎ目とずらして釘で留める。', '釘と、隅の重なり。'],
  ],
};
