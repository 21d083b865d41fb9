import type { AboutRows } from './about-kind.ts';

export const ABOUT_POSTS: AboutRows = {
  hashira: [
    [
      'Carries beams and roof down to the sill or the base stone.',
      'Tenon above and below, held by pegs; tie rails pass through it and are wedged.',
      'Foot and head with their tenons pegged, wedges at every rail, and the mark.',
    ],
    [
      '梁や屋根の重さを土台や礎石へ伝える。',
      '上下を枘差しとし、込み栓で留める。貫は柱を通して楔で締める。',
      '柱頭・柱脚の枘と込み栓、各貫の楔、番付。',
    ],
  ],
  toshibashira: [
    [
      'Runs in one piece through two storeys and holds them together.',
      'Girts are tenoned into it from the sides and drawn tight with draw keys, pegs or strap bolts.',
      'The joint at the upper floor from all sides, where the section is weakest, and its keys driven.',
    ],
    [
      '一階から二階まで一本で通り、建物を上下につなぐ。',
      '胴差を横から差し、車知栓・込み栓または羽子板ボルトで引き寄せる。',
      '断面の欠けが大きい二階床まわりの仕口を各面から。栓の打ち込み。',
    ],
  ],
  kudabashira: [
    [
      'Carries one storey only, from beam to beam.',
      'Stub or long tenon above and below, pegged or held by plates.',
      'Both ends seated, with pegs or plates in place.',
    ],
    [
      '一つの階だけを支え、横架材の間に立つ。',
      '上下とも短枘または長枘。込み栓か金物で留める。',
      '上下の納まりと、栓または金物。',
    ],
  ],
  sumibashira: [
    [
      'Stands at the corner, where two walls and the greatest uplift meet.',
      'Tenoned and pegged; often with a hold-down or a long tenon through the sill.',
      'Foot and head from both wall sides, with the hold-down or pegs, and the rails of both walls.',
    ],
    [
      '二面の壁が出会う隅に立ち、引き抜きの力が最も大きい。',
      '枘差し込み栓。ホールダウン金物や長枘を併用することが多い。',
      '柱頭・柱脚を両方の壁側から。引き抜きに効く金物か栓、二方向の貫。',
    ],
  ],
  daikokubashira: [
    [
      'The thick post in the middle of the house that takes the main beams.',
      'Beams enter from four sides, keyed with draw keys and pegs.',
      'Every side at the height of the beams, before the gaps are closed.',
    ],
    [
      '家の中央に立ち、主な梁を受ける太い柱。',
      '四方から差した梁を車知栓や込み栓で締める。',
      '梁の高さで四面すべて。仕口の隙間がふさがる前に。',
    ],
  ],
  ebisubashira: [
    [
      'The second thick post, standing opposite the main post.',
      'As the main post: beams tenoned in and keyed.',
      'Each side at the height of the beams, with keys and pegs.',
    ],
    [
      '大黒柱と対になって立つ、次に太い柱。',
      '大黒柱と同じく、差した梁を栓で締める。',
      '梁の高さの各面と、栓の打ち込み。',
    ],
  ],
  munamochibashira: [
    [
      'Runs from the ground straight up to the ridge and carries it.',
      'Tenon or fork at the head for the ridge beam; rails and beams pass through.',
      'The head at the ridge, and each crossing on the way up.',
    ],
    [
      '地面から棟までまっすぐ立ち、棟木を支える。',
      '頂部は枘か輪薙ぎで棟木を受け、途中で貫や梁が通る。',
      '棟木の納まりと、途中の各仕口。',
    ],
  ],
  tokobashira: [
    [
      'The ornamental post beside the alcove.',
      'Tenoned out of sight, often from behind or below; never nailed on the face.',
      'The hidden joints at floor and head before the finish goes on.',
    ],
    [
      '床の間の脇に立つ化粧の柱。',
      '見えない面から枘や差し込みで留め、見え掛かりには釘を打たない。',
      '仕上げで隠れる上下の納まり。',
    ],
  ],
  hanbashira: [
    [
      'Half a post against another, to receive a wall or a fitting.',
      'Screwed, bolted or nailed to what stands behind it.',
      'What it is fixed to, and with what.',
    ],
    [
      'ほかの柱や壁に添わせた半分の柱。壁や建具を受ける。',
      '後ろの材にビス・ボルト・釘で留める。',
      '何に、何で留めたか。',
    ],
  ],
  mabashira: [
    [
      'Stands between posts and carries the lining, not the house.',
      'Let into sill and beam above or toe-nailed.',
      'Spacing, and how it is notched where rails or braces cross.',
    ],
    [
      '柱の間に立ち、壁の下地を受ける。建物の重さは受けない。',
      '土台と横架材に欠き込むか、斜め釘で留める。',
      '間隔と、貫や筋かいとの欠き取り。',
    ],
  ],
  soebashira: [
    [
      'Stands against a weak post and shares its load.',
      'Bolted or keyed to the old post, tenoned or wedged at the ends.',
      'The fixings along its length, and both ends bearing.',
    ],
    [
      '弱った柱に沿わせ、荷を分けて受ける。',
      '元の柱にボルトや栓で縫い、上下は枘か楔で締める。',
      '縫い留めの位置と、上下が効いていること。',
    ],
  ],
  tsukebashira: [
    [
      'Looks like a post on the face of a wall and carries nothing.',
      'Screwed or nailed through the lining.',
      'What lies behind it, and its fixings.',
    ],
    ['壁の表に柱らしく見せる材。荷は受けない。', '下地にビスまたは釘で留める。', '裏にあるものと、留め方。'],
  ],
  hikaebashira: [
    [
      'Stands outside and props a wall or gate against leaning.',
      'Tied to the main post by rails with wedges; foot on a stone or in the ground.',
      'The rails through both posts, their wedges, and the foot.',
    ],
    [
      '外に立ち、塀や門が倒れないように支える。',
      '控えの貫で本柱とつなぎ、楔で締める。根元は石の上か掘立て。',
      '両方の柱を通る貫と楔、根元。',
    ],
  ],
  dodai: [
    [
      'Lies on the foundation and ties the feet of the posts.',
      'Scarfed in its length, crossed at corners, held by anchor bolts; posts are tenoned in.',
      'Anchor bolts with washers and nuts, scarf joints, and corners, before floor and walls.',
    ],
    [
      '基礎の上に据え、柱の足元をつなぐ。',
      '継手で延ばし、隅は仕口で組み、アンカーボルトで締める。柱は枘で差す。',
      'アンカーボルトの座金とナット、継手、隅の仕口。床や壁でふさぐ前に。',
    ],
  ],
  jifuku: [
    [
      'A rail on the base stones that closes the wall below.',
      'Tenoned between posts or notched round them.',
      'Its ends at the posts, and that it lies free of damp.',
    ],
    [
      '柱の根元で石の上に渡し、壁の下端を受ける。',
      '柱の間に枘で差すか、柱を欠いて納める。',
      '柱との取り合いと、湿気がこもらないこと。',
    ],
  ],
  ashigatame: [
    [
      'Ties the feet of posts that stand on stones, at the height of the floor.',
      'Tenoned into or through the posts, with draw keys, pegs or wedges.',
      'The joint at every post with its key or peg, before the floor is laid.',
    ],
    [
      '石場建ての柱の足元を、床の高さでつなぐ。',
      '柱に差すか通して、車知栓・込み栓・楔で締める。',
      '各柱の仕口と栓。床を張る前に。',
    ],
  ],
  hiuchidodai: [
    [
      'Keeps the corner of the sills square.',
      'Let into the sills aslant and nailed or bolted.',
      'Both ends in their notches, with the fixings.',
    ],
    [
      '土台の隅の直角を保つ。',
      '土台に斜めに傾ぎ大入れとし、釘やボルトで留める。',
      '両端の掛かりと、留め釘・ボルト。',
    ],
  ],
  tsukaishi: [
    [
      'Carries a floor post and keeps it off the soil.',
      'Bedded on tamped ground; the post stands on it or is dowelled.',
      'That it is bedded level, with the post in its middle.',
    ],
    [
      '床束を受け、土から離す。',
      '突き固めた地面に据える。束は載せるか、だぼで留める。',
      '水平に据わり、束が中央に載っていること。',
    ],
  ],
  soseki: [
    [
      'Carries a post without a sill.',
      'The foot of the post is scribed to the stone; a dowel may stand between.',
      'The scribed foot all round, and any dowel before the post is set.',
    ],
    [
      '土台なしで柱を直に受ける。',
      '柱の根元を石の形に合わせて光付ける。だぼを入れることもある。',
      '光付けの四方と、建てる前のだぼ。',
    ],
  ],
};
