import type { AboutRows } from './about-kind.ts';

export const ABOUT_WALLS: AboutRows = {
  magusa: [
    [
      'Carries the wall above an opening.',
      'Housed in posts or studs, nailed or pegged.',
      'Both ends bearing, with fixings.',
    ],
    ['開口の上の壁を受ける。', '柱や間柱に大入れとし、釘・栓で留める。', '両端の掛かりと、留め方。'],
  ],
  madodai: [
    [
      'Carries the window and closes the wall below it.',
      'Housed in posts, nailed.',
      'Both ends, and the membrane turned up at the corners.',
    ],
    ['窓を載せ、下の壁の上端を納める。', '柱に大入れとし、釘で留める。', '両端と、隅で立ち上げた防水紙。'],
  ],
  sashigamoi: [
    [
      'A deep head that carries load and stiffens the posts beside it.',
      'Tenoned into posts, with draw keys or pegs.',
      'Both post joints with keys driven.',
    ],
    [
      '荷を受け、両側の柱を固める背の高い鴨居。',
      '柱に枘差しとし、車知栓や込み栓で締める。',
      '両柱との仕口と、打ち込んだ栓。',
    ],
  ],
  kamoi: [
    [
      'Guides sliding doors at their head.',
      'Housed in one post, slid and wedged or nailed at the other; hung from above.',
      'Hidden fixings, and the hangers.',
    ],
    ['引き戸の上の溝を受ける。', '片方を大入れ、他方を横栓や釘で納め、上から吊る。', '隠れる留めと、吊り。'],
  ],
  shikii: [
    [
      'Guides sliding doors at their foot.',
      'Let in between posts, held by side keys or nails.',
      'Packing below, and fixings.',
    ],
    ['引き戸の下の溝を受ける。', '柱の間に納め、横栓や釘で留める。', '下の飼い物と、留め方。'],
  ],
  mume: [
    [
      'A head or sill without grooves.',
      'As the grooved one: housed, nailed out of sight.',
      'Hidden fixings.',
    ],
    ['溝のない鴨居や敷居。', '鴨居と同じく大入れとし、見えない所を釘で留める。', '隠れる留め。'],
  ],
  hodate: [
    [
      'Upright beside an opening that is narrower than the bay.',
      'Tenoned or nailed between head and sill.',
      'Both ends.',
    ],
    ['柱間より狭い開口の脇に立てる縦材。', '鴨居と敷居の間に枘か釘で留める。', '上下の端。'],
  ],
  tsurizuka: [
    [
      'Hangs from the beam and holds the head of a wide opening.',
      'Hooked or dovetail tenon above, keyed or screwed to the head below.',
      'Its hidden tenon above, and the fixing below.',
    ],
    [
      '梁から下がり、広い開口の鴨居を吊る。',
      '上は篠差しや蟻枘、下は鴨居に栓・ビスで留める。',
      '上の枘と、下の留め。',
    ],
  ],
  madowaku: [
    [
      'Lines the opening for the window.',
      'Screwed to posts, sill and lintel with packers.',
      'Screws, packers and tape all round.',
    ],
    [
      '窓の開口の内側を納める枠。',
      '柱・窓台・まぐさに飼い物を入れてビスで留める。',
      '四周のビス・飼い物・テープ。',
    ],
  ],
  komai: [
    [
      'A net of bamboo that holds the clay.',
      'Tied with rope, each crossing wound; upright and level in turn.',
      'The whole net before clay: spacing, ties, and no gap at the posts.',
    ],
    [
      '土を受ける竹の下地。',
      '縄で掻き付け、縦と横を編む。',
      '土を付ける前の全面。間隔、縄、柱際の隙間がないこと。',
    ],
  ],
  mawatashidake: [
    [
      'The stronger bamboo that carries the lath.',
      'Let into holes in posts, sill and beam; nailed to the tie rails.',
      'Ends in their holes, and a nail at each rail.',
    ],
    ['小舞を受ける太めの竹。', '柱・土台・横架材の穴に差し、貫に釘で留める。', '端の差し込みと、貫との釘。'],
  ],
  komainawa: [
    [
      'Ties the lath.',
      'Wound over each crossing: palm, hemp or straw.',
      'The material, and that no tie is skipped.',
    ],
    ['小舞を掻き付ける縄。', '棕櫚・麻・藁などを交点ごとに巻く。', '縄の材料と、飛ばしのないこと。'],
  ],
  nukibuse: [
    [
      'Keeps the plaster from cracking along a rail.',
      'Straw, hemp cloth or mesh pressed into clay over the rail.',
      'The strips over each rail before the next coat.',
    ],
    [
      '貫に沿ったひび割れを防ぐ。',
      '藁・麻布・網を貫の上の土に伏せ込む。',
      '次の塗りの前に、各貫の上の伏せ込み。',
    ],
  ],
  sageo: [
    [
      'Fibres that anchor plaster to wooden lath.',
      'Nailed, then spread and pressed into the first coats.',
      'Spacing, and fibres spread in both coats.',
    ],
    ['木摺の漆喰などを引き留める麻。', '釘で打ち、塗りに広げて伏せ込む。', '間隔と、塗り込んだ広がり。'],
  ],
  kizuri: [
    [
      'Narrow boards with gaps that plaster grips.',
      'Nailed to posts and studs.',
      'Gaps, joints staggered, nails.',
    ],
    ['隙間を空けて張り、塗り材を食い付かせる細い板。', '柱と間柱に釘で留める。', '隙間、継ぎの乱れ、釘。'],
  ],
  rasuami: [
    [
      'A metal mesh that holds mortar.',
      'Stapled through the paper into boards.',
      'Laps, staples, and corners.',
    ],
    ['モルタルを受ける金網。', '防水紙の上からステープルで下地に留める。', '重ね、ステープル、隅。'],
  ],
  rasubodo: [
    [
      'A board made to take plaster.',
      'Nailed or screwed to studs and rails.',
      'Nails, and joints before plaster.',
    ],
    ['塗り壁の下地となる石膏の板。', '間柱や貫に釘・ビスで留める。', '塗る前の釘と継ぎ目。'],
  ],
  kozoyomenzai: [
    [
      'A sheet that braces the wall.',
      'Nailed along all edges at the stated spacing.',
      'Nail kind and spacing along every edge, heads not sunk.',
    ],
    ['壁を固める面材。', '四周を決められた間隔で釘打ちする。', '各辺の釘の種類と間隔。めり込みのないこと。'],
  ],
  otoshiita: [
    [
      'Planks dropped into grooves that fill and stiffen the bay.',
      'In grooves of the posts, dowelled to each other.',
      'Dowels and grooves while planks go in.',
    ],
    [
      '柱の溝に落とし込み、壁をふさいで固める板。',
      '柱の溝に入れ、板どうしをだぼでつなぐ。',
      '落とし込みの途中の、だぼと溝。',
    ],
  ],
};
