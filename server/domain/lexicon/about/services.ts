import type { AboutRows } from './about-kind.ts';

export const ABOUT_SERVICES: AboutRows = {
  densen: [
    [
      'Brings electricity; hidden in walls, floors and ceilings.',
      'Stapled or clipped without crushing; by a licensed electrician.',
      'The whole run with something that tells heights, and every box.',
    ],
    [
      '電気を送る。壁・床・天井に隠れる。',
      '傷めないようステープルなどで留める。施工は有資格者による。',
      '経路の全体を高さの分かるものと共に。各ボックス。',
    ],
  ],
  jakudensen: [
    [
      'Carries signals: network, telephone, bells.',
      'Clipped, away from power cables.',
      'The run, and its distance from power cables.',
    ],
    ['通信・電話・呼び鈴などの信号を送る。', '電力線から離して留める。', '経路と、電力線との離れ。'],
  ],
  densenkan: [
    [
      'A tube through which cables can be drawn later.',
      'Clipped; ends at boxes.',
      'Where it starts, bends and ends.',
    ],
    ['後から電線を通せる管。', '支持金具で留め、両端をボックスに入れる。', '始まり、曲がり、終わりの位置。'],
  ],
  suitchibokkusu: [
    [
      'Holds a switch or socket in the wall.',
      'Screwed to a post or stud.',
      'Height above the floor, and the cables in it.',
    ],
    ['スイッチやコンセントを納める箱。', '柱や間柱にビスで留める。', '床からの高さと、入る電線。'],
  ],
  asusen: [
    [
      'Leads faults to earth.',
      'Clipped with the cables; joined at the earth rod.',
      'Its run, and the rod before it is covered.',
    ],
    ['漏電を大地へ逃がす。', '配線と共に留め、接地極につなぐ。', '経路と、埋める前の接地極。'],
  ],
  kyusuikan: [
    [
      'Brings water.',
      'Clipped, lagged, and away from nails.',
      'Run, joints, and the pressure test before covering.',
    ],
    ['水を送る。', '支持金具で留め、保温し、釘の当たらない所を通す。', '経路、継手、ふさぐ前の水圧試験。'],
  ],
  kyutokan: [
    [
      'Brings hot water.',
      'Clipped with room to move, lagged.',
      'Run, joints, lagging, and the pressure test.',
    ],
    ['湯を送る。', '伸びを見込んで留め、保温する。', '経路、継手、保温、水圧試験。'],
  ],
  haisuikan: [
    [
      'Leads waste water away by its fall.',
      'Hung or propped at steady fall.',
      'Fall, joints, cleaning eyes, and the water test.',
    ],
    ['勾配で排水を流す。', '一定の勾配で吊るか支える。', '勾配、継手、掃除口、通水試験。'],
  ],
  tsukikan: [
    [
      'Lets air into drains so that traps hold.',
      'Rises steadily to the open air.',
      'Run to the outside, and joints.',
    ],
    ['排水管に空気を入れ、トラップの水を守る。', '外気まで上り勾配で立ち上げる。', '外までの経路と継手。'],
  ],
  gasukan: [
    [
      'Brings gas.',
      'By a licensed fitter only; clipped, sleeved through walls.',
      'Run, joints, and the tightness test before covering.',
    ],
    [
      'ガスを送る。',
      '施工は有資格者に限る。支持金具で留め、貫通部はさや管とする。',
      '経路、継手、ふさぐ前の気密試験。',
    ],
  ],
  reibaikan: [
    [
      'Carries refrigerant between the units of an air conditioner.',
      'Lagged, clipped; drain hose with fall beside it.',
      'Run, lagging, and the fall of the hose.',
    ],
    [
      '冷暖房機の内外をつなぐ冷媒の管。',
      '保温して留め、ドレン管を勾配を付けて沿わせる。',
      '経路、保温、ドレンの勾配。',
    ],
  ],
  yukadanbokan: [
    [
      'Warms the floor.',
      'Clipped in loops to panel or subfloor.',
      'Every loop from above with a scale: nobody may nail there later.',
    ],
    [
      '床を暖める管。',
      '下地やパネルに輪に配して留める。',
      '物差しと共に、全体を上から。後で釘を打てない所が分かるように。',
    ],
  ],
  kankidakuto: [
    [
      'Moves air in and out.',
      'Hung, taped at joints, with fall to the outside.',
      'Run, joints, fall, and the hood.',
    ],
    [
      '空気を出し入れする管。',
      '吊って支え、継ぎ目をテープでふさぎ、外へ勾配を付ける。',
      '経路、継ぎ目、勾配、外のフード。',
    ],
  ],
  suribu: [
    [
      'A tube that leads pipes through wall, beam or foundation.',
      'Cast in or fixed before the wall is made.',
      'Place and size, and that no beam is weakened.',
    ],
    [
      '壁・梁・基礎を管が貫く所のさや。',
      '壁などを造る前に埋め込むか固定する。',
      '位置と径。梁を弱めていないこと。',
    ],
  ],
  dannetsuzai: [
    [
      'Keeps warmth in or out.',
      'Fitted without gaps between framing.',
      'That no gap is left, also round boxes and pipes; thickness.',
    ],
    [
      '熱の出入りを抑える。',
      '下地の間に隙間なく納める。',
      'ボックスや管のまわりも含め、隙間のないこと。厚さ。',
    ],
  ],
  gurasuuru: [
    [
      'Insulation of spun glass.',
      'Friction fit or stapled by its flanges.',
      'Not squeezed, no gaps, its vapour side inward.',
    ],
    [
      'ガラス繊維の断熱材。',
      '押し込むか、耳をステープルで留める。',
      '潰れや隙間のないこと。防湿側が室内であること。',
    ],
  ],
  yomodannetsuzai: [
    [
      'Insulation of wool that takes up and gives off moisture.',
      'Stapled so that it does not sag.',
      'Staples at the head, no gaps.',
    ],
    [
      '湿気を吸い吐きする羊毛の断熱材。',
      '垂れないようステープルで留める。',
      '上端の留めと、隙間のないこと。',
    ],
  ],
  mokusenidannetsuzai: [
    [
      'Insulation board of wood fibre.',
      'Cut tight between framing or screwed over it.',
      'Tight joints, screws with washers.',
    ],
    ['木の繊維の断熱板。', '下地の間にきつく納めるか、外からビスで留める。', '継ぎ目の密着、座付きビス。'],
  ],
  serurosufaiba: [
    [
      'Insulation of paper fibre, blown in.',
      'Blown behind a mesh to a stated density.',
      'Mesh, filled to the top, and the delivery slips.',
    ],
    [
      '古紙の繊維を吹き込む断熱材。',
      'シートの内に決められた密度で吹き込む。',
      'シート、上端までの充填、材料の伝票。',
    ],
  ],
  happodannetsuban: [
    [
      'Stiff insulation that also bears damp.',
      'Cut in between, clipped or screwed; joints taped.',
      'Joints taped, and held from below in floors.',
    ],
    [
      '湿気に強い硬い断熱板。',
      '間に切り込み、金具やビスで受け、継ぎ目をテープでふさぐ。',
      '継ぎ目のテープと、床では落下止め。',
    ],
  ],
  kiryudome: [
    [
      'Stops air from rising inside walls.',
      'Packed or boarded where walls meet floor and ceiling.',
      'Foot and head of each wall.',
    ],
    ['壁の中を空気が上るのを止める。', '床・天井と壁の取り合いに詰めるか、木でふさぐ。', '各壁の上下の端。'],
  ],
  boshitsushito: [
    [
      'Keeps indoor moisture out of the wall.',
      'Stapled on framing, lapped over timber, taped.',
      'Laps, and tape at boxes and pipes.',
    ],
    [
      '室内の湿気が壁に入るのを防ぐ。',
      '下地に留め、木の上で重ね、テープでふさぐ。',
      '重ねと、ボックス・管まわりのテープ。',
    ],
  ],
  toshitsubosuishito: [
    [
      'Sheds water and lets vapour out.',
      'Stapled from below upward, lapped.',
      'Laps, and tape round openings.',
    ],
    ['水を防ぎ、湿気を外へ逃がす。', '下から張り上げ、重ねて留める。', '重ねと、開口まわりのテープ。'],
  ],
  bosuishi: [
    [
      'Sheds water behind mortar or boards.',
      'Stapled, lapped from below upward.',
      'Laps, and no tears, before lath.',
    ],
    [
      'モルタルや板の裏で水を防ぐ紙。',
      '下から重ねてステープルで留める。',
      'ラスなどを張る前に、重ねと破れのないこと。',
    ],
  ],
  rufingu: [
    [
      'The second roof below the roofing.',
      'Laid from the eaves up, lapped, turned up at walls.',
      'Laps, valleys, and turn-ups before roofing.',
    ],
    [
      '屋根材の下で雨を防ぐ。',
      '軒から重ねて張り上げ、壁際は立ち上げる。',
      '屋根材を葺く前の重ね・谷・立ち上がり。',
    ],
  ],
  kimitsutepu: [
    [
      'Closes joints of sheets and holes.',
      'Pressed on dry, clean faces.',
      'Every joint closed, without folds.',
    ],
    ['シートの継ぎ目や穴をふさぐ。', '乾いたきれいな面に圧着する。', '継ぎ目がふさがり、しわのないこと。'],
  ],
  mizukiri: [
    [
      'Throws water off the wall.',
      'Nailed behind the membrane, lapped.',
      'The membrane over its upper edge.',
    ],
    ['壁の水を外へ切る。', '防水紙の裏に差し、重ねて留める。', '上端に防水紙がかぶること。'],
  ],
  bogizai: [
    [
      'Keeps termites and rot from the timber near the ground.',
      'Brushed or sprayed by trained people; some woods need none.',
      'Height treated, product and day, before walls close.',
    ],
    [
      '地面に近い木を白蟻や腐れから守る。',
      '塗るか吹き付ける。施工は心得のある者による。樹種により不要。',
      '処理した高さ、薬剤名、日付。壁をふさぐ前に。',
    ],
  ],
};
