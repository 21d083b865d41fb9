import type { AboutRows } from './about-kind.ts';

export const ABOUT_FLOORS: AboutRows = {
  obiki: [
    [
      'Carries the joists of the ground floor.',
      'Dovetailed or laid on sill or ledger; floor posts stand below with cramp irons.',
      'Ends, splices over floor posts, and irons.',
    ],
    [
      '一階の根太を受ける。',
      '土台や大引受けに掛け、床束をかすがいで留める。',
      '両端、束の上の継手、かすがい。',
    ],
  ],
  neda: [
    [
      'Carries the floor boards.',
      'Nailed to floor beams, notched or not.',
      'Spacing and nails, and what runs between.',
    ],
    ['床板を受ける。', '大引に載せるか欠き込み、釘で留める。', '間隔と釘、間を通る配管・配線。'],
  ],
  kiwaneda: [
    [
      'The joist along the wall.',
      'Nailed or screwed to posts or sill.',
      'Fixings, and the gap closed against draught.',
    ],
    ['壁際に沿う根太。', '柱や土台に釘・ビスで留める。', '留め方と、壁との間の気流止め。'],
  ],
  nedakake: [
    ['A ledger that carries joist ends.', 'Nailed or screwed to each post.', 'Fixings at each post.'],
    ['壁際で根太の端を受ける横材。', '柱ごとに釘・ビスで留める。', '各柱の留め。'],
  ],
  obikiuke: [
    [
      'A ledger that carries the ends of floor beams.',
      'Nailed or bolted to posts.',
      'Fixings, and the bearing of each floor beam.',
    ],
    ['大引の端を受ける横材。', '柱に釘・ボルトで留める。', '留め方と、大引の掛かり。'],
  ],
  yukazuka: [
    [
      'Stands under the floor and carries a floor beam.',
      'On a strut stone; cramp irons above, ties nailed between.',
      'Foot on its stone, irons, and ties.',
    ],
    [
      '床下に立ち、大引を受ける。',
      '束石に載せ、上はかすがい、間は根がらみを釘で留める。',
      '束石への載り、かすがい、根がらみ。',
    ],
  ],
  negarami: [
    [
      'Ties floor posts so that they cannot fall.',
      'Nailed to the posts or passed through and wedged.',
      'Nails or wedges at each post.',
    ],
    ['床束どうしをつなぎ、倒れを防ぐ。', '束に釘で打つか、通して楔で締める。', '各束の釘または楔。'],
  ],
  korobidome: [
    [
      'Keeps joists or purlins from rolling over.',
      'Nailed between or against them.',
      'Where it sits, and nails.',
    ],
    ['根太や母屋が転ぶのを止める。', '間に入れるか当てて釘で留める。', '位置と釘。'],
  ],
  arayuka: [
    [
      'Rough boards or panels under the finished floor.',
      'Nailed to joists.',
      'Nails along joists, and what lies below, before the finish.',
    ],
    ['仕上げの下に張る下地の床。', '根太に釘で留める。', '仕上げの前に、釘と、その下のもの。'],
  ],
  yukaita: [
    [
      'The floor that is walked on.',
      'Nailed through the tongue, or dovetail battens below.',
      'What it will hide: joists, pipes and insulation before the last board.',
    ],
    [
      '歩く面となる板。',
      '実から釘を打つか、裏を蟻桟で留める。',
      '隠れる根太・配管・断熱材を、最後の一枚の前に。',
    ],
  ],
  agarigamachi: [
    [
      'The edge of the raised floor at the entrance.',
      'Tenoned or housed in posts, wedged from behind.',
      'Joints and wedges from behind.',
    ],
    ['玄関の床の端を受ける化粧材。', '柱に枘や大入れで納め、裏から楔で締める。', '裏側の仕口と楔。'],
  ],
  engamachi: [
    ['The outer edge beam of a veranda floor.', 'Tenoned into veranda posts or bolted.', 'Each post joint.'],
    ['縁側の床の外端を受ける材。', '縁束や柱に枘差し、またはボルトで留める。', '各柱との仕口。'],
  ],
  nobuchi: [
    [
      'Carries the ceiling boards.',
      'Nailed to its carriers.',
      'Spacing, and what lies above, before boards.',
    ],
    ['天井板を受ける。', '野縁受けに釘で留める。', '板を張る前の間隔と、上にあるもの。'],
  ],
  nobuchiuke: [
    ['Carries the ceiling joists.', 'Nailed to hangers.', 'Hangers, and nails.'],
    ['野縁を受ける。', '吊り木に釘で留める。', '吊り木と釘。'],
  ],
  tsurigi: [
    ['Hangs the ceiling from the frame.', 'Nailed at both ends.', 'Both ends nailed, none left loose.'],
    ['天井を骨組から吊る。', '上下を釘で留める。', '上下の釘。効いていないものがないこと。'],
  ],
  tsurigiuke: [
    [
      'Bears the hangers without passing steps from the floor above.',
      'Notched on beams, nailed.',
      'Bearings on the beams.',
    ],
    ['吊り木を受け、上階の振動を伝えにくくする。', '梁に欠き込んで釘で留める。', '梁への載り。'],
  ],
  saobuchi: [
    [
      'Visible battens on which ceiling boards lie.',
      'Let into the edge trim; boards nailed from above.',
      'From above, before the loft closes.',
    ],
    [
      '天井板を載せて見せる細い縁。',
      '廻り縁に差し、板は上から釘で留める。',
      '小屋裏がふさがる前に、上から。',
    ],
  ],
  mawaribuchi: [
    [
      'Trims the edge between wall and ceiling.',
      'Nailed or screwed to posts.',
      'Fixings, and the wall behind it.',
    ],
    ['壁と天井の境を納める縁。', '柱に釘・ビスで留める。', '留め方と、裏の壁。'],
  ],
  tenjoita: [
    [
      'The ceiling that is looked at.',
      'Nailed to ceiling joists.',
      'What it will hide: beams, cables and ducts before the last board.',
    ],
    ['見上げる面となる板。', '野縁に釘で留める。', '隠れる梁・配線・ダクトを、最後の一枚の前に。'],
  ],
};
