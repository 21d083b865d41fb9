import type { AboutRows } from './about-kind.ts';

export const ABOUT_ROOFS: AboutRows = {
  koyazuka: [
    [
      'Stands on a roof beam and carries a purlin.',
      'Short tenon above and below; cramp irons or rail wedges hold it.',
      'Head and foot with irons or wedges.',
    ],
    [
      '小屋梁の上に立ち、母屋を受ける。',
      '上下とも短枘。かすがいや小屋貫の楔で留める。',
      '上下のかすがい・楔。',
    ],
  ],
  munazuka: [
    [
      'Stands under the ridge.',
      'Tenon above and below; tie rails pass through.',
      'Head at the ridge, and its foot.',
    ],
    ['棟木の下に立つ束。', '上下とも枘。小屋貫が通る。', '棟木との納まりと、足元。'],
  ],
  moya: [
    [
      'Carries the rafters between eaves and ridge.',
      'Lies on strut tenons; spliced over or near a strut.',
      'Splices, and irons at the struts.',
    ],
    ['軒と棟の間で垂木を受ける。', '束の枘に載せ、束の近くで継ぐ。', '継手と、束とのかすがい。'],
  ],
  hanamoya: [
    [
      'The purlin nearest the eaves.',
      'Lies on the end of beam or principal, notched and bolted.',
      'Its bearings, and bolts.',
    ],
    ['軒に最も近い母屋。', '梁や合掌の端に欠き込み、ボルトで留める。', '載りと、ボルト。'],
  ],
  munagi: [
    [
      'The highest piece, where the rafters of both slopes meet.',
      'Lies on ridge struts; scarfed in its length.',
      'Scarfs, strut tenons, and the ridge writing if there is any.',
    ],
    [
      '両側の垂木が集まる、最も高い材。',
      '棟束に載せ、長さ方向は継手で継ぐ。',
      '継手、棟束の枘、棟札や墨書があればそれも。',
    ],
  ],
  sumigi: [
    [
      'Runs down the hip and carries jack rafters.',
      'Notched over the plate corner, bolted; jack rafters are let in.',
      'The corner over the plates, and its head at the ridge.',
    ],
    [
      '寄棟などの隅を下り、配付垂木を受ける。',
      '桁の隅に欠き込んでボルトで締める。配付垂木を差す。',
      '桁の隅の納まりと、棟側の端。',
    ],
  ],
  tanigi: [
    [
      'Runs down the valley where two slopes meet.',
      'Notched over plate and ridge, nailed or bolted.',
      'Both ends, and the valley before the flashing.',
    ],
    [
      '二つの屋根が出会う谷を下る材。',
      '桁と棟木に欠き込み、釘・ボルトで留める。',
      '両端と、谷板を張る前の谷。',
    ],
  ],
  taruki: [
    [
      'Carries the roof boards from ridge to eaves.',
      'Notched on purlins and plate; nailed, with a twist strap at the eaves.',
      'Spacing, and the strap at each plate.',
    ],
    [
      '棟から軒まで野地板を受ける。',
      '母屋と桁に欠き込んで釘で留め、軒ではひねり金物を付ける。',
      '間隔と、桁の上の金物。',
    ],
  ],
  keshodaruki: [
    [
      'A planed rafter that stays in sight under the eaves.',
      'Nailed from above, where boards hide it.',
      'The nails from above, before boards.',
    ],
    [
      '軒裏に見せる、かんなを掛けた垂木。',
      '上から釘で留め、釘は野地板で隠す。',
      '板を張る前の、上からの釘。',
    ],
  ],
  nodaruki: [
    [
      'A rough rafter above the visible ones, at the true slope.',
      'Nailed on purlins and levers.',
      'Spacing and nails before boards.',
    ],
    [
      '化粧の上にあって本当の勾配をつくる、見えない垂木。',
      '母屋や桔木の上に釘で留める。',
      '板を張る前の間隔と釘。',
    ],
  ],
  haitsukedaruki: [
    [
      'A short rafter from the eaves to the hip.',
      'Let into the hip rafter and nailed.',
      'Each joint at the hip.',
    ],
    ['軒から隅木に取り付く短い垂木。', '隅木に欠き込んで釘で留める。', '隅木との各取り付き。'],
  ],
  hanegi: [
    [
      'A lever hidden in the roof that lifts deep eaves.',
      'Held down at its inner end, propped near the wall; tied or bolted to the eaves.',
      'Inner end, prop and tie: none of them is seen again.',
    ],
    [
      '小屋の中に隠れ、てこで深い軒を支える材。',
      '尻を押さえ、軒桁付近を支点とし、先をボルトや縄で吊る。',
      '尻・支点・吊り。どれも後では見えない。',
    ],
  ],
  tarukikake: [
    [
      'A ledger on the wall that carries rafter heads.',
      'Nailed, screwed or bolted to each post.',
      'Every fixing, and the flashing line above.',
    ],
    [
      '壁に付けて垂木の上端を受ける。',
      '柱ごとに釘・ビス・ボルトで留める。',
      'すべての留めと、上の雨押えの位置。',
    ],
  ],
  hirokomai: [
    [
      'Lies along the rafter ends and starts the roof boards.',
      'Nailed to each rafter.',
      'Nails, and its joints over rafters.',
    ],
    ['垂木の先に渡し、野地板の納まりを整える。', '垂木ごとに釘で留める。', '釘と、垂木の上での継ぎ。'],
  ],
  mendoita: [
    [
      'Closes the gap between rafters over the plate.',
      'Let into grooves in the rafters or nailed.',
      'That no gap is left, or where air is meant to pass.',
    ],
    ['桁の上で垂木の間をふさぐ。', '垂木の溝に差すか、釘で留める。', '隙間がないこと、または通気の位置。'],
  ],
  hanakakushi: [
    ['Covers the ends of the rafters.', 'Nailed to rafter ends.', 'Rafter ends before they are covered.'],
    ['垂木の先を隠す板。', '垂木の木口に釘で留める。', '隠す前の垂木の先。'],
  ],
  hafuita: [
    [
      'Covers the roof edge at the gable.',
      'Nailed or keyed to the ends of purlins and ridge.',
      'Purlin ends behind it, and its fixings.',
    ],
    ['妻側の屋根の端を覆う板。', '母屋や棟木の端に釘や栓で留める。', '裏の母屋の端と、留め方。'],
  ],
  nojiita: [
    [
      'Carries underlay and roofing.',
      'Nailed to each rafter.',
      'Boards with their nails before the underlay.',
    ],
    ['下葺きと屋根材を受ける板。', '垂木ごとに釘で留める。', '下葺きの前の板と釘。'],
  ],
  kawarazan: [
    [
      'Holds the tiles.',
      'Nailed through the underlay into rafters.',
      'Nails in rafters, and gaps for water to run.',
    ],
    ['瓦を掛ける桟。', '下葺きの上から垂木に釘で留める。', '垂木に効いた釘と、水の逃げ。'],
  ],
  rokubari: [
    [
      'The level tie of a truss; it is pulled, not only bent.',
      'Principals are notched in at its ends and bolted; the king post is strapped.',
      'Heel joints with bolts, and the splice with all its bolts or keys.',
    ],
    [
      '洋小屋の下をつなぐ水平材。引張りを受ける。',
      '両端に合掌を欠き込みボルトで締め、真束を金物で吊る。',
      '合掌尻のボルトと、継手のボルト・栓すべて。',
    ],
  ],
  shinzuka: [
    [
      'Hangs in the middle of a truss from the principals.',
      'Tenon with strap or bolt to the tie; principals butt into its head.',
      'Head with both principals, and the strap at its foot.',
    ],
    [
      '合掌から吊られ、洋小屋の中央に立つ。',
      '頭に合掌を突き付け、下は枘と箱金物・ボルトで陸梁を吊る。',
      '頭の両合掌と、足元の金物。',
    ],
  ],
  tsuizuka: [
    [
      'One of two posts in a truss with a straining beam between.',
      'Tenoned and strapped as a king post.',
      'Head, foot, and both ends of the straining beam.',
    ],
    ['二重梁を挟んで立つ一対の束。', '真束と同じく枘と金物で留める。', '上下の端と、二重梁の両端。'],
  ],
  gassho: [
    [
      'The sloping member of a truss; in thatched houses the great pair of rafters.',
      'Notched into the tie beam, bolted; in thatch lashed with rope.',
      'Foot, head, and every purlin cleat or lashing.',
    ],
    [
      '洋小屋の斜材。茅葺きでは大きな叉首の組。',
      '陸梁に欠き込んでボルトで締める。茅葺きでは縄で縛る。',
      '尻と頭、母屋の転び止めや縄。',
    ],
  ],
  nijubari: [
    [
      'A beam above the tie that keeps rafters or struts apart or together.',
      'Tenoned or lapped, pegged or bolted.',
      'Both ends with peg or bolt.',
    ],
    [
      '下の梁の上に重ねて渡し、合掌や束をつなぐ。',
      '枘差しか渡り腮とし、栓・ボルトで留める。',
      '両端の栓・ボルト。',
    ],
  ],
  hasamizuka: [
    [
      'A pair of boards that clasps members of a truss between them.',
      'Bolted through.',
      'All bolts with washers.',
    ],
    ['二枚で洋小屋の材を挟む束。', 'ボルトで縫う。', 'すべてのボルトと座金。'],
  ],
  sasu: [
    [
      'Poles crossed at the ridge that carry thatch.',
      'Sharpened feet in the beam, lashed at the top.',
      'Feet in their sockets, and the lashings.',
    ],
    ['棟で組んで茅屋根を受ける丸太。', '尖らせた足を梁の穴に立て、頭を縄で結ぶ。', '足の納まりと、縄。'],
  ],
  yanaka: [
    [
      'A pole across the principals of a thatched roof.',
      'Lashed with straw rope.',
      'Lashings at each crossing.',
    ],
    ['叉首の上に渡し、茅下地を受ける丸太。', '縄で縛る。', '各交点の縄。'],
  ],
  kuraunposuto: [
    [
      'Stands on the tie beam and carries a purlin under the collars.',
      'Tenoned and pegged; braces spread from its head.',
      'Pegs at head, foot and braces.',
    ],
    [
      '西洋の小屋組で、梁の上に立ち中央の母屋を受ける束。',
      '枘差し込み栓。頭から方杖が広がる。',
      '上下と方杖の込み栓。',
    ],
  ],
  hanmabimu: [
    [
      'A short beam from the wall that carries a roof without a tie across.',
      'Tenoned and pegged with an arched brace below.',
      'Each joint with all its pegs.',
    ],
    [
      '壁から短く突き出し、横切る梁なしで屋根を受ける西洋の梁。',
      '枘差し込み栓とし、下を曲がりの方杖で支える。',
      '各仕口と、すべての込み栓。',
    ],
  ],
  kurakku: [
    [
      'One of a pair of curved timbers from ground to ridge.',
      'Halved and pegged at collar, tie and apex.',
      'Apex, collar, and its foot on the pad.',
    ],
    [
      '地面から棟まで一組で立ち上がる、西洋の曲がり材。',
      '頂部や梁との交点を相欠きとし、込み栓で留める。',
      '頂部、つなぎ梁、石の上の足元。',
    ],
  ],
};
