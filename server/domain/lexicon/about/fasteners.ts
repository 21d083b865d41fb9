import type { AboutRows } from './about-kind.ts';

export const ABOUT_FASTENERS: AboutRows = {
  komisen: [
    [
      'Holds a tenon in its mortise.',
      'Driven through both, the hole in the tenon a little offset so that it draws.',
      'That it is driven home, before the end is cut off.',
    ],
    [
      '枘が穴から抜けるのを止める。',
      '両材を貫いて打つ。枘の穴を少しずらして引き寄せる。',
      '端を切る前に、打ち切ったこと。',
    ],
  ],
  hanasen: [
    [
      'Holds a through tenon from its far side.',
      'Driven through the end of the tenon, outside the post.',
      'Driven tight against the post.',
    ],
    ['柱を通した枘の先で抜けを止める。', '柱の外に出た枘の先に打つ。', '柱の面に締まっていること。'],
  ],
  shachisen: [
    [
      'A tapered key that draws two beams together through a post.',
      'Driven aslant into matching slots of tenon and beam, often in pairs.',
      'Both keys driven, seen from above.',
    ],
    [
      '柱を挟んだ二つの横架材を引き寄せる、勾配の付いた栓。',
      '枘と材の溝を合わせて斜めに打つ。二枚使いが多い。',
      '上から見た、打ち込んだ栓。',
    ],
  ],
  yatoihozo: [
    [
      'A separate tenon of hard wood that joins two pieces across a post.',
      'Slid into mortises on both sides and keyed.',
      'The tenon with its keys before the joint closes.',
    ],
    [
      '柱を通して二材をつなぐ、別木の堅い枘。',
      '両材の穴に入れ、車知栓や込み栓で締める。',
      '仕口が閉じる前の枘と栓。',
    ],
  ],
  kusabi: [
    [
      'Tightens a rail in its mortise.',
      'Driven beside the rail from both faces, and again once the wood has dried.',
      'At every post, driven to the same depth on both sides.',
    ],
    [
      '貫を穴の中で締める。',
      '貫の上や脇に両面から打ち、乾いたら打ち増す。',
      'すべての柱で、両面の打ち込み。',
    ],
  ],
  warikusabi: [
    [
      'Spreads the end of a tenon so that it cannot be drawn out.',
      'Driven into a saw cut in the tenon.',
      'Driven, before the end is planed off.',
    ],
    ['枘の先を広げ、抜けを防ぐ。', '枘に入れた鋸目に打ち込む。', '先を払う前の打ち込み。'],
  ],
  dabo: [
    [
      'Keeps two faces from sliding.',
      'A plug of hard wood in holes of both.',
      'In place before the upper piece lies on it.',
    ],
    ['重ねた二材のずれを止める。', '両方の穴に入れる堅木の栓。', '上の材が載る前のだぼ。'],
  ],
  chigiri: [
    [
      'A key like two dovetails that holds two edges together.',
      'Let into both pieces flush.',
      'In place, with its seat.',
    ],
    ['鼓形の木片で、二材の合わせ目をつなぐ。', '両材に彫り込んで納める。', '彫り込みと納まり。'],
  ],
  arizan: [
    [
      'Keeps a wide board flat.',
      'Slid into a dovetail groove, without glue.',
      'From the back before it is hidden.',
    ],
    ['幅の広い板の反りを止める。', '蟻溝に送り込む。接着しない。', '隠れる前に、裏から。'],
  ],
  ankaboruto: [
    [
      'Ties the sill to the foundation.',
      'Cast in concrete; washer and nut on the sill.',
      'Place, thread above the nut, washer, and that it stands upright.',
    ],
    [
      '土台を基礎に留める。',
      '基礎に埋め込み、土台の上で座金とナットで締める。',
      '位置、ねじの出、座金、傾きのないこと。',
    ],
  ],
  horudaunkanamono: [
    [
      'Ties the foot of a post against uplift.',
      'Bolted or screwed to the post, on a long anchor bolt.',
      'All screws or bolts, and the nut on the anchor.',
    ],
    [
      '柱の浮き上がりを止める。',
      '柱にボルト・ビスで留め、長いアンカーボルトで締める。',
      'ボルト・ビスがそろい、ナットが締まっていること。',
    ],
  ],
  hagoitaboruto: [
    [
      'Ties the end of a beam to plate or post.',
      'Bolt through the beam, strap and nut on the other.',
      'Both nuts with washers, tightened.',
    ],
    [
      '梁の端を桁や柱に引き寄せる。',
      '梁をボルトで縫い、相手側をナットで締める。',
      '両方のナットと座金の締まり。',
    ],
  ],
  tanzakukanamono: [
    ['Ties two pieces in line.', 'Bolted or screwed across the joint.', 'Every bolt or screw.'],
    [
      '一直線の二材をつなぐ帯金物。',
      '継ぎ目をまたいでボルト・ビスで留める。',
      'ボルト・ビスがそろっていること。',
    ],
  ],
  kadokanamono: [
    [
      'Ties post and sill or beam at a corner.',
      'Nailed or screwed to both.',
      'Every nail or screw hole filled.',
    ],
    ['柱と横架材を隅で留める。', '両方に釘・ビスで留める。', '穴のすべてに釘・ビスが入っていること。'],
  ],
  yamagatapureto: [
    [
      'A V-shaped plate that ties a post to sill or beam.',
      'Nailed with its own nails.',
      'Every hole filled.',
    ],
    ['柱と横架材を留める山形の板。', '専用の釘で留める。', 'すべての穴の釘。'],
  ],
  sujikaipureto: [
    [
      'Fixes the end of a brace to post and sill.',
      'Screws and a bolt as its maker states.',
      'Every screw in brace, post and sill.',
    ],
    ['筋かいの端を柱と横架材に留める。', '決められたビスとボルトで留める。', '筋かい・柱・横架材の各ビス。'],
  ],
  hinerikanamono: [
    [
      'Ties a rafter to plate or purlin against wind.',
      'Nailed to both faces.',
      'Nails in both, at each rafter.',
    ],
    ['風で垂木があおられるのを止める。', '垂木と桁の両方に釘で留める。', '各垂木で、両方の釘。'],
  ],
  hiuchikanamono: [
    [
      'A metal angle brace that keeps the frame square in plan.',
      'Bolted at both ends.',
      'Both bolts tightened.',
    ],
    ['水平の隅を固める鋼製の火打。', '両端をボルトで締める。', '両端のボルトの締まり。'],
  ],
  kasugai: [
    ['Clamps two pieces together.', 'Both points driven across the joint.', 'Both points driven home.'],
    ['二材をまたいで留める。', '両端の爪を打ち込む。', '両方の爪の打ち込み。'],
  ],
  boruto: [
    [
      'Draws pieces together through a hole.',
      'Washer and nut on both sides.',
      'Washers, thread, and tightness before it is covered.',
    ],
    ['穴を通して材を締める。', '両側を座金とナットで締める。', '隠れる前の座金・ねじの出・締まり。'],
  ],
  zagane: [
    [
      'Spreads the force of a nut over the wood.',
      'Under the nut, let in or not.',
      'That it is there, and not sunk askew.',
    ],
    [
      'ナットの力を木に広げて伝える。',
      'ナットの下に入れる。彫り込むこともある。',
      '入っていること、斜めにめり込んでいないこと。',
    ],
  ],
  kugi: [
    [
      'Fixes boards, battens and plates.',
      'Driven; its kind and length decide what it holds.',
      'Kind, spacing, and heads not sunk.',
    ],
    [
      '板・桟・金物を留める。',
      '打ち込む。効きは種類と長さで決まる。',
      '種類、間隔、頭がめり込んでいないこと。',
    ],
  ],
  bisu: [
    [
      'Fixes what may have to be undone, or pulls.',
      'Driven by a machine; structural screws are named on their heads.',
      'Kind on the head, number and spacing.',
    ],
    [
      '外すことのある所や、引き抜きに効かせる所を留める。',
      '機械でねじ込む。構造用は頭に表示がある。',
      '頭の表示、本数、間隔。',
    ],
  ],
};
