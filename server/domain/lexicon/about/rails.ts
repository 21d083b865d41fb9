import type { AboutRows } from './about-kind.ts';

export const ABOUT_RAILS: AboutRows = {
  nuki: [
    [
      'Passes through the posts and ties them; earthen walls get their toughness from it.',
      'Wedged in the mortise from both sides; spliced only within a post.',
      'Wedges driven at each post, splices inside posts, spacing, and the bamboo nailed to it.',
    ],
    [
      '柱を貫いてつなぐ。土壁の粘り強さはこれによる。',
      '柱の穴で両側から楔を打って締める。継ぐのは柱の中だけとする。',
      '各柱の楔、柱内の継手、段の間隔、貫に留めた間渡し竹。',
    ],
  ],
  jinuki: [
    [
      'The lowest tie rail, close above the sill.',
      'Through the posts, wedged from above.',
      'Wedges at each post, and its height above the sill.',
    ],
    ['土台のすぐ上を通る一番下の貫。', '柱に通し、上から楔で締める。', '各柱の楔と、土台からの高さ。'],
  ],
  koshinuki: [
    [
      'The tie rail at the height of the waist.',
      'Through the posts, wedged.',
      'Wedges at each post, and splices inside posts.',
    ],
    ['腰の高さを通る貫。', '柱に通し、楔で締める。', '各柱の楔と、柱内の継手。'],
  ],
  uchinorinuki: [
    [
      'The tie rail just above the heads of the openings.',
      'Through the posts, wedged; the face rail and head are hung from it.',
      'Wedges at each post, and what hangs from it.',
    ],
    ['鴨居のすぐ上を通る貫。', '柱に通して楔で締め、鴨居や長押を吊る。', '各柱の楔と、吊り込んだ部材。'],
  ],
  tenjonuki: [
    [
      'The highest tie rail, near the ceiling.',
      'Through the posts, wedged.',
      'Wedges at each post before the ceiling hides them.',
    ],
    ['天井の近くを通る一番上の貫。', '柱に通し、楔で締める。', '天井で隠れる前の各柱の楔。'],
  ],
  ashigatamenuki: [
    [
      'A thick tie rail at the height of the floor, for posts on stones.',
      'Through the posts, wedged hard.',
      'Wedges at each post before the floor is laid.',
    ],
    ['床の高さで柱の足元をつなぐ厚い貫。', '柱に通し、楔で強く締める。', '床を張る前の各柱の楔。'],
  ],
  hinuki: [
    [
      'A heavy tie rail high between posts, below the head tie.',
      'Through the posts, wedged or pegged.',
      'Each post joint with its wedges.',
    ],
    ['頭貫の下で柱をつなぐ太い貫。', '柱に通し、楔や栓で締める。', '各柱の仕口と楔。'],
  ],
  kashiranuki: [
    [
      'Ties the heads of the posts.',
      'Dropped into the open head of the post and locked by a dovetail or half lap.',
      'The joint seen from above before the next piece lies on it.',
    ],
    ['柱の頭をつなぐ。', '柱の頭に落とし込み、蟻や相欠きで組む。', '上の材が載る前に、上から見た仕口。'],
  ],
  koyanuki: [
    [
      'Ties the roof struts to each other.',
      'Through the struts, wedged, or nailed to their faces.',
      'Wedges or nails at each strut.',
    ],
    ['小屋束どうしをつなぐ。', '束に通して楔で締めるか、束の側面に釘で打つ。', '各束の楔または釘。'],
  ],
  nageshi: [
    [
      'Lies on the face of the posts and clasps them; today mostly a trim.',
      'Notched over the posts and nailed from hidden places.',
      'The notches and nails before they are capped.',
    ],
    [
      '柱の面に取り付けて挟む材。今は化粧が多い。',
      '柱に欠き込み、見えない所から釘で留める。',
      '釘隠しなどでふさぐ前の欠き込みと釘。',
    ],
  ],
  dotsunagi: [
    [
      'Keeps studs from twisting and backs what is fixed to the wall.',
      'Nailed between studs.',
      'Where it sits, since shelves and rails are fixed to it later.',
    ],
    [
      '間柱のねじれを止め、壁に付けるものの下地になる。',
      '間柱の間に釘で留める。',
      '取付け位置。後で棚や手すりを留める目当てになる。',
    ],
  ],
  dobuchi: [
    [
      'Carries the lining and keeps air behind it.',
      'Nailed or screwed to posts and studs.',
      'Spacing, direction, and the fixings.',
    ],
    ['壁の仕上げ材を受け、裏に空気を通す。', '柱や間柱に釘・ビスで留める。', '間隔、向き、留め方。'],
  ],
  sujikai: [
    [
      'Keeps the frame from leaning by a diagonal in the wall.',
      'Notched and nailed, or held by a brace plate at both ends.',
      'Both ends with every nail or screw of the plate, and its direction.',
    ],
    [
      '壁の対角に入れ、骨組の変形を防ぐ。',
      '欠き込んで釘で留めるか、両端を筋かいプレートで留める。',
      '両端の金物の釘・ビスがそろっていること、傾きの向き。',
    ],
  ],
  tasukigakesujikai: [
    [
      'Two braces that cross in one bay.',
      'Each plated at both ends; where they cross neither should be cut through.',
      'The crossing, and all four ends.',
    ],
    [
      '一つの壁に二本を交差させた筋かい。',
      '四つの端を金物で留める。交わる所で材を断ち切らない。',
      '交差部と、四つの端。',
    ],
  ],
  hozue: [
    [
      'Stiffens the corner between post and beam.',
      'Tenoned or notched at 45° and pegged or bolted.',
      'Both ends, with peg or bolt.',
    ],
    [
      '柱と横架材の隅を斜めに固める。',
      '斜めに枘差しか欠き込みとし、栓やボルトで留める。',
      '両端の納まりと、栓・ボルト。',
    ],
  ],
  hiuchi: [
    [
      'Keeps floor or roof square where beams meet.',
      'Let in aslant and bolted.',
      'Both ends in their notches, bolts tightened.',
    ],
    [
      '梁や桁の隅で、床や小屋の水平面を固める。',
      '傾ぎ大入れとし、ボルトで締める。',
      '両端の掛かりと、締めたボルト。',
    ],
  ],
  koyasujikai: [
    [
      'Keeps the rows of roof struts from falling over.',
      'Nailed to the struts aslant.',
      'That each row has one, with nails at every strut.',
    ],
    [
      '小屋束の列が倒れるのを防ぐ。',
      '束に斜めに当てて釘で打つ。',
      '各列にあり、すべての束に釘が効いていること。',
    ],
  ],
  furedome: [
    [
      'Keeps the feet or the middle of roof struts in line.',
      'Nailed across the struts.',
      'Nails at every strut.',
    ],
    ['小屋束の足元や中ほどの振れを止める。', '束に渡して釘で打つ。', '各束の釘。'],
  ],
  uindoburesu: [
    [
      'Runs from a principal to the purlin in the slope of the roof and keeps the frames from racking.',
      'Tenoned into principal and purlin, pegged; often curved.',
      'Both tenons with their pegs before boards go on.',
    ],
    [
      '屋根面で合掌と母屋を斜めにつなぎ、骨組の倒れを防ぐ。',
      '両端を枘差し込み栓とする。曲がり材が多い。',
      '野地板を張る前の両端の枘と栓。',
    ],
  ],
};
